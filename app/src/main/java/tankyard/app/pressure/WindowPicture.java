package tankyard.app.pressure;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tankyard.app.chart.Axis;
import tankyard.engine.working.Working;

/**
 * One separator's window, ready to be drawn. All values in the unit shown.
 *
 * @param verdict one sentence: what to set, or why nothing can be set
 * @param segments what the least is made of, left to right
 * @param sum what they add up to, in words; empty where the least is not known
 * @param setting the regulator's mark, if there is a setting
 * @param marks small ticks with words
 * @param beyond limits past the end of the axis, in words
 */
record WindowPicture(
    String separatorId,
    String title,
    State state,
    String verdict,
    String unit,
    Axis axis,
    Optional<End> least,
    Optional<End> most,
    List<Segment> segments,
    String sum,
    Optional<SettingMark> setting,
    List<Mark> marks,
    List<String> beyond,
    List<String> notChecked) {

  /** What can be said of it. */
  enum State {
    OPEN,
    CLOSED,
    /** Gas keeps the separator from standing full: the window is for one that does. */
    INVALID,
    /** One end or both are not known. */
    UNKNOWN
  }

  /**
   * An end of the window.
   *
   * @param digits of the value
   * @param band plus or minus from the heights, in digits; empty if not known
   */
  record End(
      double value,
      String digits,
      String name,
      String caseName,
      double band,
      String bandDigits,
      String thingId,
      Supplier<Working> working) {}

  /** A part of the least. */
  record Segment(Part part, double from, double to, String digits) {}

  /** What the least is made of. */
  enum Part {
    STATIC("static"),
    FRICTION("friction"),
    VALVE("valve"),
    MARGIN("margin");

    private final String words;

    Part(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * The regulator's setting at the gauge.
   *
   * @param value with no oil flowing
   * @param atFlow built up at full oil flow
   */
  record SettingMark(
      double value, double atFlow, String words, boolean fits, Supplier<Working> working) {}

  /** A small tick. */
  record Mark(
      Kind kind,
      double value,
      String digits,
      String name,
      String thingId,
      Supplier<Working> working) {
    /** What it stands for; each has a sign of its own. */
    enum Kind {
      LOWER,
      UPPER,
      TANK_ALONE,
      OIL_LEG
    }
  }

  WindowPicture {
    segments = List.copyOf(segments);
    marks = List.copyOf(marks);
    beyond = List.copyOf(beyond);
    notChecked = List.copyOf(notChecked);
  }

  /** Whether both ends are known and the least lies above the most. */
  boolean isCrossed() {
    return least.isPresent() && most.isPresent() && least.get().value() > most.get().value();
  }
}
