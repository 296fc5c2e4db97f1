package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;

/**
 * Pressure along one line, of one liquid or of one for each run, from the downstream end up to
 * where the flow comes from.
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

  /**
   * The same line with its runs parted, so that each part may hold a liquid of its own.
   *
   * @param distancesM from the line's start, rising, none at the end of a run
   */
  public LineLaw cutAt(List<Double> distancesM) {
    List<PipeRun> parts = new ArrayList<>();
    double before = 0;
    for (PipeRun run : runs) {
      double length = run.path().lengthM();
      double at = 0;
      for (double distance : distancesM) {
        double here = distance - before;
        if (here > at && here < length) {
          parts.add(run.between(at, here));
          at = here;
        }
      }
      parts.add(at == 0 ? run : run.between(at, length));
      before += length;
    }
    return new LineLaw(parts);
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
    return march(flowM3PerS, Collections.nCopies(runs.size(), liquid), downstreamPascals);
  }

  /**
   * Marches the line where it does not hold the same liquid all along.
   *
   * @param liquids one for each run
   */
  public MarchResult march(double flowM3PerS, List<Liquid> liquids, double downstreamPascals) {
    if (liquids.size() != runs.size()) {
      throw new IllegalArgumentException(
          liquids.size() + " liquids for " + runs.size() + " runs of pipe");
    }
    boolean forward = flowM3PerS >= 0;
    List<Reach> reaches = reaches(Math.abs(flowM3PerS), liquids);
    Climb walk = new Climb(downstreamPascals);
    for (int k = 0; k < reaches.size(); k++) {
      walk.climb(reaches.get(forward ? reaches.size() - 1 - k : k), forward);
    }
    List<FlowState> flows = new ArrayList<>();
    for (int r = 0; r < runs.size(); r++) {
      flows.add(new PipeFlow(runs.get(r), liquids.get(r)).state(flowM3PerS));
    }
    return walk.result(points(reaches, walk, forward), flows);
  }

  private List<Reach> reaches(double size, List<Liquid> liquids) {
    List<Reach> reaches = new ArrayList<>();
    double distance = 0;
    double elevation = runs.get(0).path().elevation(0);
    for (int r = 0; r < runs.size(); r++) {
      PipePath path = runs.get(r).path();
      Liquid liquid = liquids.get(r);
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

  private static List<LinePoint> points(List<Reach> reaches, Climb walk, boolean forward) {
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
}
