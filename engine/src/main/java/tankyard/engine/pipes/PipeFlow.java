package tankyard.engine.pipes;

import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;

/**
 * Friction of one run by Darcy and Weisbach, {@code dp = (f L / D + K) density v^2 / 2}, with
 * {@link FrictionFactor}. Fittings are counted in: extra length in L, velocity heads in K.
 */
public final class PipeFlow implements FlowLaw {
  private final PipeRun run;
  private final Liquid liquid;
  private final double lengthM;

  public PipeFlow(PipeRun run, Liquid liquid) {
    this.run = run;
    this.liquid = liquid;
    this.lengthM = run.path().lengthM() + run.minor().extraLengthM();
  }

  @Override
  public Drop drop(double flowM3PerS) {
    double q = Math.abs(flowM3PerS);
    double resistance = liquid.densityKgPerM3() / (2 * run.areaM2() * run.areaM2());
    Drop size = friction(q, resistance).plus(fittings(q, resistance));
    return new Drop(Math.copySign(size.pascals(), flowM3PerS), size.slope());
  }

  /** Velocity, Reynolds number, regime and factor at a flow. */
  public FlowState state(double flowM3PerS) {
    double reynolds = reynolds(Math.abs(flowM3PerS));
    double velocity = flowM3PerS / run.areaM2();
    if (reynolds == 0) {
      return new FlowState(0, 0, FlowRegime.STILL, 0);
    }
    FrictionFactor f = FrictionFactor.at(reynolds, run.relativeRoughness());
    return new FlowState(velocity, reynolds, f.regime(), f.factor());
  }

  private Drop friction(double q, double resistance) {
    double reynolds = reynolds(q);
    if (reynolds <= FrictionFactor.LAMINAR_UP_TO) {
      // 64/Re written out, so that no flow has a slope and no division by zero.
      double slope = 64 * lengthM / run.boreM() * resistance * viscousFlow();
      return new Drop(slope * q, slope);
    }
    FrictionFactor f = FrictionFactor.at(reynolds, run.relativeRoughness());
    double pascals = f.factor() * lengthM / run.boreM() * resistance * q * q;
    return new Drop(pascals, f.exponent() * pascals / q);
  }

  private Drop fittings(double q, double resistance) {
    double k = run.minor().k();
    double viscousSlope = run.minor().viscousK() * resistance * viscousFlow();
    return new Drop(
        k * resistance * q * q + viscousSlope * q, 2 * k * resistance * q + viscousSlope);
  }

  private double reynolds(double q) {
    return q / viscousFlow();
  }

  /** The flow at which the Reynolds number is one. */
  private double viscousFlow() {
    return liquid.viscosityPaS() * run.areaM2() / (liquid.densityKgPerM3() * run.boreM());
  }
}
