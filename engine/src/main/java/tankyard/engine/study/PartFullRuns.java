package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tankyard.engine.pipes.PartFull;

/** The part-full stretches of a line in the order of its pipe. */
final class PartFullRuns {
  private PartFullRuns() {}

  /** As they were marched: their ends lie where the hydraulic grade meets the pipe. */
  static List<LineProfile.Stretch> marched(List<PartFull> stretches) {
    return stretches.stream()
        .sorted(Comparator.comparingDouble(PartFull::fromM))
        .map(s -> new LineProfile.Stretch(LaidLine.feet(s.fromM()), LaidLine.feet(s.toM())))
        .toList();
  }

  /** Of points alone: from the first of a run of part-full ones to the last. */
  static List<LineProfile.Stretch> of(List<PipePoint> points) {
    List<LineProfile.Stretch> found = new ArrayList<>();
    PipePoint first = null;
    PipePoint last = null;
    for (PipePoint point : points) {
      if (point.partFull()) {
        first = first == null ? point : first;
        last = point;
      } else if (first != null) {
        found.add(new LineProfile.Stretch(first.distance(), last.distance()));
        first = null;
      }
    }
    if (first != null) {
      found.add(new LineProfile.Stretch(first.distance(), last.distance()));
    }
    return found;
  }
}
