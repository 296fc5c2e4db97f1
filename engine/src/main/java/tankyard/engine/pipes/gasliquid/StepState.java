package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.Water;
import tankyard.engine.pipes.FlowState;
import tankyard.engine.pipes.FrictionFactor;
import tankyard.engine.pipes.PipeRun;

/** One step of a march with what its gradient was made from. */
record StepState(
    PipeRun run, boolean payne, GasLiquidFlow flow, GasLiquidFluids fluids, GasLiquidStep step) {

  Phases phases() {
    return fluids.at(step.mean());
  }

  double liquidMPerS() {
    return flow.liquidM3PerS() / run.areaM2();
  }

  double gasM3PerS() {
    return flow.freeGas(step.mean()) * fluids.gasVolume(phases());
  }

  double froude() {
    double v = step.gradient().mixtureMPerS();
    return v * v / (Water.STANDARD_GRAVITY * run.boreM());
  }

  double velocityNumber() {
    return BeggsBrill.velocityNumber(liquidMPerS(), phases());
  }

  /** Of the mixture as if neither slipped. */
  double mixedKgPerM3() {
    return blend(phases().liquid().densityKgPerM3(), phases().gas().densityKgPerM3());
  }

  double mixedPaS() {
    return blend(phases().liquid().viscosityPaS(), phases().gas().viscosityPaS());
  }

  /** Of that mixture, as one liquid in the pipe. */
  FlowState flowState() {
    double v = step.gradient().mixtureMPerS();
    double reynolds = mixedKgPerM3() * v * run.boreM() / mixedPaS();
    FrictionFactor factor = FrictionFactor.at(reynolds, run.relativeRoughness());
    return new FlowState(v, reynolds, factor.regime(), factor.factor());
  }

  private double blend(double liquid, double gas) {
    double part = step.gradient().liquidPart();
    return part * liquid + (1 - part) * gas;
  }
}
