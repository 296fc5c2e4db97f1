package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;

/**
 * Pressure along one line of one liquid, from the downstream end up to where the flow comes from.
 *
 * <p>Friction and height are added station by station. Where the sum falls below zero gauge the
 * pipe can't hold full: air gets in, the pressure there is that of the air, and the fall beyond it
 * pulls nothing. The most upstream such station is the control point, and the upstream pressure
 * depends only on what lies between it and the upstream end. Trusting the siphon instead would ask
 * for a vacuum that gassy oil-field water and a tank's open end don't hold.
 */
public final class LineLaw {
  private final List<PipeRun> runs;

  private LineLaw(List<PipeRun> runs) {
    this.runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new IllegalArgumentException("A line needs one run of pipe at least");
    }
  }

  public static LineLaw of(PipeRun run) {
    return new LineLaw(List.of(run));
  }

  /** Several sizes one after the other, in the line's own direction. */
  public static LineLaw of(List<PipeRun> runs) {
    return new LineLaw(runs);
  }

  public List<PipeRun> runs() {
    return runs;
  }

  public double lengthM() {
    return runs.stream().mapToDouble(r -> r.path().lengthM()).sum();
  }

  public double volumeM3() {
    return runs.stream().mapToDouble(PipeRun::volumeM3).sum();
  }

  /** From the line's start to its end. */
  public double riseM() {
    return runs.stream().mapToDouble(r -> r.path().riseM()).sum();
  }

  /** Friction alone, for a line that runs full all the way. */
  public FlowLaw friction(Liquid liquid) {
    return runs.stream()
        .<FlowLaw>map(run -> new PipeFlow(run, liquid))
        .reduce((flow) -> Drop.NONE, FlowLaw::then);
  }

  /**
   * Marches the line.
   *
   * @param flowM3PerS positive from the line's start to its end; standing still counts as positive
   * @param downstreamPascals gauge, at the end where the flow leaves
   */
  public MarchResult march(double flowM3PerS, Liquid liquid, double downstreamPascals) {
    boolean forward = flowM3PerS >= 0;
    List<Reach> reaches = reaches(Math.abs(flowM3PerS), liquid);
    Upstream walk = new Upstream(downstreamPascals);
    for (int k = 0; k < reaches.size(); k++) {
      walk.climb(reaches.get(forward ? reaches.size() - 1 - k : k), forward);
    }
    List<FlowState> flows =
        runs.stream().map(run -> new PipeFlow(run, liquid).state(flowM3PerS)).toList();
    return walk.result(points(reaches, walk, forward), flows);
  }

  private List<Reach> reaches(double size, Liquid liquid) {
    List<Reach> reaches = new ArrayList<>();
    double distance = 0;
    double elevation = runs.get(0).path().elevation(0);
    for (int r = 0; r < runs.size(); r++) {
      PipePath path = runs.get(r).path();
      Drop perMetre = new PipeFlow(runs.get(r), liquid).drop(size).times(1 / path.lengthM());
      for (int i = 1; i < path.stations(); i++) {
        double length = path.distance(i) - path.distance(i - 1);
        double rise = path.elevation(i) - path.elevation(i - 1);
        reaches.add(
            new Reach(
                new ControlPoint(r, i - 1, distance, elevation),
                new ControlPoint(r, i, distance + length, elevation + rise),
                liquid.staticPascals(rise),
                perMetre.times(length)));
        distance += length;
        elevation += rise;
      }
    }
    return reaches;
  }

  private static List<LinePoint> points(List<Reach> reaches, Upstream walk, boolean forward) {
    List<LinePoint> points = new ArrayList<>();
    for (int i = 0; i <= reaches.size(); i++) {
      ControlPoint at = i == 0 ? reaches.get(0).from() : reaches.get(i - 1).to();
      int step = forward ? reaches.size() - i : i;
      points.add(
          new LinePoint(
              at.distanceM(), at.elevationM(), walk.pressure(step), walk.siphonPressure(step)));
    }
    return points;
  }

  /** Pipe between two stations, in the line's own direction. */
  record Reach(ControlPoint from, ControlPoint to, double staticPascals, Drop friction) {}

  /** The walk against the flow: what has been gathered since the end or the last control point. */
  private static final class Upstream {
    private final double downstream;
    private final List<Double> pressures = new ArrayList<>();
    private final List<Double> siphon = new ArrayList<>();
    private final List<PartFull> partFull = new ArrayList<>();
    private double gatheredStatic;
    private double gatheredFriction;
    private double slope;
    private ControlPoint control;
    private double emptyFrom = Double.NaN;

    Upstream(double downstream) {
      this.downstream = downstream;
      pressures.add(downstream);
      siphon.add(downstream);
    }

    double pressure(int step) {
      return pressures.get(step);
    }

    double siphonPressure(int step) {
      return siphon.get(step);
    }

    void climb(Reach reach, boolean forward) {
      double rise = forward ? reach.staticPascals() : -reach.staticPascals();
      ControlPoint lower = forward ? reach.to() : reach.from();
      ControlPoint upper = forward ? reach.from() : reach.to();
      double before = last(pressures);
      siphon.add(last(siphon) + rise + reach.friction().pascals());
      gatheredStatic += rise;
      gatheredFriction += reach.friction().pascals();
      slope += reach.friction().slope();
      double raw = base() + gatheredStatic + gatheredFriction;
      if (raw < 0) {
        if (Double.isNaN(emptyFrom)) {
          double share = before <= 0 ? 0 : before / (before - raw);
          emptyFrom = lower.distanceM() + share * (upper.distanceM() - lower.distanceM());
        }
        control = upper;
        gatheredStatic = 0;
        gatheredFriction = 0;
        slope = 0;
        pressures.add(0.0);
      } else {
        closeEmpty(lower);
        pressures.add(raw);
      }
    }

    MarchResult result(List<LinePoint> points, List<FlowState> flows) {
      if (control != null) {
        closeEmpty(control);
      }
      return new MarchResult(
          last(pressures),
          slope,
          control == null ? 1 : 0,
          Optional.ofNullable(control),
          gatheredStatic,
          gatheredFriction,
          last(siphon),
          points,
          partFull,
          flows);
    }

    private double base() {
      return control == null ? downstream : 0;
    }

    private void closeEmpty(ControlPoint end) {
      if (!Double.isNaN(emptyFrom)) {
        double other = end.distanceM();
        partFull.add(new PartFull(Math.min(emptyFrom, other), Math.max(emptyFrom, other)));
        emptyFrom = Double.NaN;
      }
    }

    private static double last(List<Double> values) {
      return values.get(values.size() - 1);
    }
  }
}
