package tankyard.engine.leasefile;

import java.util.List;
import tankyard.engine.fluids.BrineSpec;
import tankyard.engine.fluids.EmulsionSpec;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.OilSpec;
import tankyard.engine.fluids.ViscosityPoint;
import tankyard.engine.lease.Fluids;

/**
 * Measured viscosities that no oil has. The laws they are put into say so themselves: what they
 * refuse is refused here, in their words, before anybody works with it.
 */
final class FluidRules {
  private FluidRules() {}

  static List<Complaint> complaints(Fluids fluids, String place) {
    List<ViscosityPoint> measured =
        fluids.oilViscosity().stream()
            .map(p -> new ViscosityPoint(p.temperature(), p.viscosity()))
            .toList();
    try {
      OilSpec oil = new OilSpec(fluids.oil(), measured);
      new FluidModel(oil, new BrineSpec(fluids.brine()), EmulsionSpec.USUAL);
      return List.of();
    } catch (IllegalArgumentException refused) {
      return List.of(
          new Complaint(
              place + "/oilViscosity",
              SenseRules.midSentence(refused.getMessage()),
              "measurements of one oil, each thinner than the colder one, or none"));
    }
  }
}
