package tankyard.engine.study;

import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * What stands along a line, point by point. The points are made when somebody reads them: a study
 * has thousands, and a reader looks at one line.
 */
public final class LineProfile {
  private final Pressure highest;
  private final List<Stretch> partFull;
  private final Supplier<List<PipePoint>> maker;
  private List<PipePoint> made;

  /** A stretch of pipe, from its start, between distances along the line. */
  public record Stretch(Length from, Length to) {}

  private LineProfile(Pressure highest, List<Stretch> partFull, Supplier<List<PipePoint>> maker) {
    this.highest = highest;
    this.partFull = List.copyOf(partFull);
    this.maker = maker;
  }

  /**
   * Of a marched line.
   *
   * @param highest pressure anywhere along it
   * @param partFull the stretches that are, each to where the hydraulic grade meets the pipe
   */
  static LineProfile of(
      Pressure highest, List<Stretch> partFull, Supplier<List<PipePoint>> points) {
    return new LineProfile(highest, partFull, points);
  }

  /** Of points that are known, one at least. */
  public static LineProfile of(List<PipePoint> points) {
    Pressure highest =
        points.stream()
            .map(PipePoint::pressure)
            .max(Comparator.comparingDouble(Pressure::pascals))
            .orElseThrow();
    return of(highest, PartFullRuns.of(points), () -> points);
  }

  /** From the line's start to its end. */
  public List<PipePoint> points() {
    List<PipePoint> known = made;
    if (known == null) {
      known = List.copyOf(maker.get());
      made = known;
    }
    return known;
  }

  /** The highest pressure anywhere along it. */
  public Pressure highest() {
    return highest;
  }

  /** The stretches that run part full, the first from the line's start first. */
  public List<Stretch> partFull() {
    return partFull;
  }
}
