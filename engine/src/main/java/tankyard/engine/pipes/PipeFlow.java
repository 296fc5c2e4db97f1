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
    Drop size = friction(q).plus(fittings(q));
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

  private Drop friction(double q) {
    double reynolds = reynolds(q);
    if (reynolds <= FrictionFactor.LAMINAR_UP_TO) {
      return viscous(64 * lengthM / run.boreM(), q);
    }
    FrictionFactor f = FrictionFactor.at(reynolds, run.relativeRoughness());
    double pascals = pascals(f.factor() * lengthM / run.boreM(), q);
    return new Drop(pascals, f.exponent() * pascals / q);
  }

  private Drop fittings(double q) {
    double square = pascals(run.minor().k(), q);
    double slope = q == 0 ? 0 : 2 * square / q;
    return new Drop(square, slope).plus(viscous(run.minor().viscousK(), q));
  }

  /** Velocity heads over the Reynolds number: multiplied out, so that no flow has a slope too. */
  private Drop viscous(double headsTimesReynolds, double q) {
    double slope = pascals(headsTimesReynolds, viscousFlow()) / viscousFlow();
    return new Drop(slope * q, slope);
  }

  private double pascals(double velocityHeads, double q) {
    return DarcyWeisbach.pascals(velocityHeads, liquid.densityKgPerM3(), q / run.areaM2());
  }

  private double reynolds(double q) {
    return q / viscousFlow();
  }

  /** The flow at which the Reynolds number is one. */
  private double viscousFlow() {
    return liquid.viscosityPaS() * run.areaM2() / (liquid.densityKgPerM3() * run.boreM());
  }
}
