package tankyard.engine.pipes;

import java.util.List;
import tankyard.engine.fluids.Liquid;

/**
 * A line at one flow, of one liquid or of one for each run. Friction is worked out, the pressure at
 * its downstream end is still open: it can be marched from many pressures and rubs the same each
 * time.
 */
public final class LineAtFlow {
  private final LineLaw line;
  private final List<Liquid> liquids;
  private final double flow;
  private final FlowState[] states;
  private final double[] pascalsPerMetre;
  private final double[] slopePerMetre;

  /** The last march: solver, audit and result ask for the same one in turn. */
  private Marched last;

  LineAtFlow(LineLaw line, List<Liquid> liquids, double flowM3PerS) {
    this.line = line;
    this.liquids = liquids;
    this.flow = flowM3PerS;
    int n = line.runs().size();
    states = new FlowState[n];
    pascalsPerMetre = new double[n];
    slopePerMetre = new double[n];
    for (int r = 0; r < n; r++) {
      PipeRun run = line.runs().get(r);
      PipeAtFlow pipe = new PipeFlow(run, liquids.get(r)).at(flow);
      states[r] = pipe.state();
      double share = 1 / run.path().lengthM();
      pascalsPerMetre[r] = Math.abs(pipe.drop().pascals()) * share;
      slopePerMetre[r] = pipe.drop().slope() * share;
    }
  }

  /** The same line with what it holds at another flow. */
  public LineAtFlow at(double flowM3PerS) {
    return flowM3PerS == flow ? this : new LineAtFlow(line, liquids, flowM3PerS);
  }

  /**
   * Marches the line.
   *
   * @param downstreamPascals gauge, at the end where the flow leaves
   */
  public MarchResult march(double downstreamPascals) {
    Marched before = last;
    if (before != null && before.from() == downstreamPascals) {
      return before.result();
    }
    MarchResult result = new Climb(this, downstreamPascals).result();
    last = new Marched(downstreamPascals, result);
    return result;
  }

  /** Positive from the line's start to its end; standing still counts as positive. */
  public double flow() {
    return flow;
  }

  boolean isForward() {
    return flow >= 0;
  }

  Stations stations() {
    return line.stations();
  }

  /** What a reach's rise costs in the line's own direction. */
  double staticPascals(int reach) {
    Stations stations = line.stations();
    return liquids.get(stations.run(reach)).staticPascals(stations.riseM(reach));
  }

  double frictionPascals(int reach) {
    return pascalsPerMetre[line.stations().run(reach)] * line.stations().lengthM(reach);
  }

  /** How fast a reach's friction grows with the size of the flow. */
  double frictionSlope(int reach) {
    return slopePerMetre[line.stations().run(reach)] * line.stations().lengthM(reach);
  }

  private record Marched(double from, MarchResult result) {}

  List<FlowState> states() {
    return List.of(states);
  }
}
