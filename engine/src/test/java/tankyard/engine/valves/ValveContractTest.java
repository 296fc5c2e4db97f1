package tankyard.engine.valves;

import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.FlowLawContract;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Cv;

class ValveContractTest implements FlowLawContract {
  @Override
  public FlowLaw law() {
    return ValveLoss.law(Cv.ofGpmPerRootPsi(6), new Liquid(1060, 1e-3));
  }
}
