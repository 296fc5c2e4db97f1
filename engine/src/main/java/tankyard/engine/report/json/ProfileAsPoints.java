package tankyard.engine.report.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import tankyard.engine.study.LineProfile;
import tankyard.engine.study.PipePoint;

/** A line's profile is written as its points. */
final class ProfileAsPoints {
  private ProfileAsPoints() {}

  /** For the line that has it. */
  interface OfLine {
    @JsonProperty("points")
    LineProfile profile();

    @JsonProperty("partFull")
    List<LineProfile.Stretch> partFull();
  }

  /** For the profile itself. */
  interface OfProfile {
    @JsonValue
    List<PipePoint> points();
  }
}
