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
  private final double areaM2;

  /** The flow at which the Reynolds number is one. */
  private final double viscousFlow;

  public PipeFlow(PipeRun run, Liquid liquid) {
    this.run = run;
    this.liquid = liquid;
    this.lengthM = run.path().lengthM() + run.minor().extraLengthM();
    this.areaM2 = run.areaM2();
    this.viscousFlow = liquid.viscosityPaS() * areaM2 / (liquid.densityKgPerM3() * run.boreM());
  }

  @Override
  public Drop drop(double flowM3PerS) {
    return at(flowM3PerS).drop();
  }

  /** Velocity, Reynolds number, regime and factor at a flow. */
  public FlowState state(double flowM3PerS) {
    return at(flowM3PerS).state();
  }

  PipeAtFlow at(double flowM3PerS) {
    double q = Math.abs(flowM3PerS);
    double reynolds = q / viscousFlow;
    if (reynolds == 0) {
      return new PipeAtFlow(signed(laminar(q), flowM3PerS), FlowState.STILL);
    }
    FrictionFactor f = FrictionFactor.at(reynolds, run.relativeRoughness());
    Drop size = f.regime() == FlowRegime.LAMINAR ? laminar(q) : turbulent(f, q);
    return new PipeAtFlow(
        signed(size, flowM3PerS),
        new FlowState(flowM3PerS / areaM2, reynolds, f.regime(), f.factor()));
  }

  private Drop signed(Drop pipe, double flowM3PerS) {
    Drop size = pipe.plus(fittings(Math.abs(flowM3PerS)));
    return new Drop(Math.copySign(size.pascals(), flowM3PerS), size.slope());
  }

  private Drop laminar(double q) {
    return viscous(64 * lengthM / run.boreM(), q);
  }

  private Drop turbulent(FrictionFactor f, double q) {
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
    double slope = pascals(headsTimesReynolds, viscousFlow) / viscousFlow;
    return new Drop(slope * q, slope);
  }

  private double pascals(double velocityHeads, double q) {
    return DarcyWeisbach.pascals(velocityHeads, liquid.densityKgPerM3(), q / areaM2);
  }
}
