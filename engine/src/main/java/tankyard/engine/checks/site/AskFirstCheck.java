package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Vessel;
import tankyard.engine.working.Source;

/** New tanks or vessels: others have a say before dirt moves. */
public final class AskFirstCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("air rules, landowner, setbacks and roads before dirt moves");

  @Override
  public String id() {
    return "ask-first";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    boolean builds =
        evidence
            .lease()
            .things()
            .anyMatch(t -> t.status() == Status.NEW && (t instanceof Tank || t instanceof Vessel));
    return builds ? List.of(finding()) : List.of();
  }

  private Finding finding() {
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            "New tanks and vessels: what their vents give off falls under air rules, and the"
                + " landowner, setbacks and county roads have a say.",
            SOURCE)
        .mendedBy(
            "Ask before dirt moves: the state's air office about tank vents, the landowner about"
                + " place and brine, the local code about distances, the county about axle weights.");
  }
}
