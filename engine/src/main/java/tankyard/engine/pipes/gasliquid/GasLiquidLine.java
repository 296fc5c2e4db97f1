package tankyard.engine.pipes.gasliquid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.pipes.ControlPoint;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.PartFull;
import tankyard.engine.pipes.PipePath;

/**
 * Gas and liquid through one line, over its hills, by {@link BeggsBrill}.
 *
 * <p>The march starts where the flow leaves and goes up to where it comes from, reach by reach, the
 * gas growing and shrinking with the pressure. A fall never draws the pressure below the air's.
 *
 * @param line in the direction of flow: {@link LineLaw#reversed()} where it runs the other way
 * @param payne see {@link BeggsBrill}
 */
public record GasLiquidLine(LineLaw line, boolean payne) {
  /** Below this a sum that should be the air's pressure is rounding, and no crest, Pa. */
  private static final double ROUNDING = 1e-6;

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
    return march(flow, Collections.nCopies(line.runs().size(), fluids), downstream, air);
  }

  /**
   * Marches a line that does not hold the same liquid all along.
   *
   * @param fluids one for each run
   */
  public GasLiquidMarch march(
      GasLiquidFlow flow,
      List<GasLiquidFluids> fluids,
      AbsolutePressure downstream,
      AbsolutePressure air) {
    return new Walk(flow, fluids, downstream, air).up();
  }

  private static double slope(double lengthM, double riseM) {
    return Math.asin(Math.max(-1, Math.min(1, riseM / lengthM)));
  }

  /** One march. */
  private final class Walk {
    private final GasLiquidFlow flow;
    private final List<GasLiquidFluids> fluids;
    private final AbsolutePressure downstream;
    private final Tally tally;
    private final List<GasLiquidPoint> points = new ArrayList<>();
    private final List<PartFull> partFull = new ArrayList<>();
    private final GasLiquidCautions cautions = new GasLiquidCautions();
    private ControlPoint control;

    Walk(
        GasLiquidFlow flow,
        List<GasLiquidFluids> fluids,
        AbsolutePressure downstream,
        AbsolutePressure air) {
      this.flow = flow;
      this.fluids = fluids;
      this.downstream = downstream;
      tally = new Tally(downstream.pascals(), air.pascals());
    }

    GasLiquidMarch up() {
      double distance = line.lengthM();
      for (int r = line.runs().size() - 1; r >= 0; r--) {
        PipePath path = line.runs().get(r).path();
        GasLiquidPipe pipe = new GasLiquidPipe(line.runs().get(r), payne, flow, fluids.get(r));
        for (int i = path.stations() - 1; i > 0; i--) {
          double length = path.distance(i) - path.distance(i - 1);
          double slope = slope(length, path.elevation(i) - path.elevation(i - 1));
          ReachMarch reach = new ReachMarch(pipe, r, slope);
          Gradient here = reach.gradient(tally);
          point(distance, path.elevation(i), here);
          cautions.look(here, slope);
          double before = tally.pressurePa;
          reach.walk(length, distance - length, here, tally);
          distance -= length;
          boolean isStart = r == 0 && i == 1;
          if (isStart) {
            distance = 0;
          }
          cut(
              before,
              distance,
              length,
              new ControlPoint(r, i - 1, distance, path.elevation(i - 1)));
          if (isStart) {
            point(0, path.elevation(0), reach.gradient(tally));
          }
        }
      }
      Collections.reverse(points);
      return result();
    }

    private void point(double distance, double elevation, Gradient gradient) {
      points.add(
          new GasLiquidPoint(
              distance, elevation, new AbsolutePressure(tally.pressurePa), gradient));
    }

    private void cut(double before, double distance, double length, ControlPoint upper) {
      double after = tally.pressurePa;
      if (tally.cutAtVacuum(ROUNDING)) {
        control = upper;
        double full = before > tally.airPa ? (before - tally.airPa) / (before - after) : 0;
        partFull.add(0, new PartFull(distance, distance + (1 - full) * length));
      }
    }

    private GasLiquidMarch result() {
      double upstream = tally.pressurePa;
      cautions.held(tally.heldPa);
      return new GasLiquidMarch(
          new AbsolutePressure(upstream),
          tally.lift,
          tally.friction,
          upstream - downstream.pascals() - tally.lift - tally.friction - tally.heldPa,
          tally.heldPa,
          tally.liquidM3,
          tally.steps,
          tally.hardest,
          tally.stretch,
          Optional.ofNullable(control),
          partFull,
          points,
          cautions.said());
    }
  }
}
