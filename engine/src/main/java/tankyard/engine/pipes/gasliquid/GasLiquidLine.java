package tankyard.engine.pipes.gasliquid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;

/**
 * Gas and liquid through one line, over its hills, by {@link BeggsBrill}.
 *
 * <p>The march starts where the flow leaves and goes up to where it comes from, reach by reach, the
 * gas growing and shrinking with the pressure. A fall never draws the pressure below the air's.
 *
 * @param payne see {@link BeggsBrill}
 */
public record GasLiquidLine(LineLaw line, boolean payne) {

  /** With the method as first published. */
  public static GasLiquidLine of(LineLaw line) {
    return new GasLiquidLine(line, false);
  }

  /**
   * Marches the line.
   *
   * @param downstream where the flow leaves
   * @param air of the site; see {@link tankyard.engine.fluids.Atmosphere}
   */
  public GasLiquidMarch march(
      GasLiquidFlow flow,
      GasLiquidFluids fluids,
      AbsolutePressure downstream,
      AbsolutePressure air) {
    List<GasLiquidPoint> points = new ArrayList<>();
    GasLiquidCautions cautions = new GasLiquidCautions();
    double[] state = {downstream.pascals(), 0, 0, 0};
    double held = 0;
    double distance = line.lengthM();
    for (int r = line.runs().size() - 1; r >= 0; r--) {
      PipeRun run = line.runs().get(r);
      PipePath path = run.path();
      GasLiquidPipe pipe = new GasLiquidPipe(run, payne, flow, fluids);
      for (int i = path.stations() - 1; i > 0; i--) {
        double length = path.distance(i) - path.distance(i - 1);
        double slope = slope(length, path.elevation(i) - path.elevation(i - 1));
        ReachMarch reach = new ReachMarch(pipe, slope, air);
        points.add(point(distance, path.elevation(i), state, reach));
        cautions.look(points.get(points.size() - 1).gradient(), slope);
        state = reach.upTo(length, state);
        distance -= length;
        if (state[ReachMarch.PRESSURE] < air.pascals()) {
          held += air.pascals() - state[ReachMarch.PRESSURE];
          state[ReachMarch.PRESSURE] = air.pascals();
        }
        if (r == 0 && i == 1) {
          points.add(point(0, path.elevation(0), state, reach));
        }
      }
    }
    Collections.reverse(points);
    return result(state, downstream, held, points, cautions);
  }

  private static GasLiquidMarch result(
      double[] state,
      AbsolutePressure downstream,
      double held,
      List<GasLiquidPoint> points,
      GasLiquidCautions cautions) {
    double upstream = state[ReachMarch.PRESSURE];
    double lift = state[ReachMarch.LIFT];
    double friction = state[ReachMarch.FRICTION];
    cautions.held(held);
    return new GasLiquidMarch(
        new AbsolutePressure(upstream),
        lift,
        friction,
        upstream - downstream.pascals() - lift - friction - held,
        held,
        state[ReachMarch.LIQUID],
        points,
        cautions.said());
  }

  private static GasLiquidPoint point(
      double distance, double elevation, double[] state, ReachMarch reach) {
    double pascals = state[ReachMarch.PRESSURE];
    return new GasLiquidPoint(
        distance, elevation, new AbsolutePressure(pascals), reach.gradient(pascals));
  }

  private static double slope(double lengthM, double riseM) {
    return Math.asin(Math.max(-1, Math.min(1, riseM / lengthM)));
  }
}
