package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipeRun;

/** One run of pipe with what flows through it: the gradient at a pressure and slope. */
final class GasLiquidPipe {
  private final PipeRun run;
  private final BeggsBrill law;
  private final GasLiquidFlow flow;
  private final GasLiquidFluids fluids;

  GasLiquidPipe(PipeRun run, boolean payne, GasLiquidFlow flow, GasLiquidFluids fluids) {
    this.run = run;
    law = new BeggsBrill(run.boreM(), run.roughnessM(), payne);
    this.flow = flow;
    this.fluids = fluids;
  }

  double areaM2() {
    return run.areaM2();
  }

  /** With fittings spread over the run as more friction. */
  Gradient at(AbsolutePressure pressure, double slope) {
    Phases phases = fluids.at(pressure);
    double liquid = flow.liquidM3PerS() / run.areaM2();
    double gas = flow.freeGas(pressure) * fluids.gasVolume(phases) / run.areaM2();
    Gradient bare = law.at(liquid, gas, phases, slope, pressure);
    return new Gradient(
        bare.pattern(),
        bare.liquidPart(),
        bare.holdUp(),
        bare.mixtureMPerS(),
        bare.mixtureKgPerM3(),
        bare.liftPaPerM(),
        withFittings(bare, phases),
        bare.acceleration());
  }

  /** Velocity heads of the unslipped mixture; common practice for fittings in gas-liquid lines. */
  private double withFittings(Gradient bare, Phases phases) {
    MinorLosses minor = run.minor();
    double length = run.path().lengthM();
    double part = bare.liquidPart();
    double density =
        part * phases.liquid().densityKgPerM3() + (1 - part) * phases.gas().densityKgPerM3();
    double viscosity =
        part * phases.liquid().viscosityPaS() + (1 - part) * phases.gas().viscosityPaS();
    double speed = bare.mixtureMPerS();
    double k = minor.k() + minor.viscousK() * viscosity / (density * speed * run.boreM());
    return bare.frictionPaPerM() * (1 + minor.extraLengthM() / length)
        + k * density * speed * speed / (2 * length);
  }
}
