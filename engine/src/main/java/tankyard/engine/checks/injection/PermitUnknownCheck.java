package tankyard.engine.checks.injection;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** An injection well whose permitted pressure nobody typed. */
public final class PermitUnknownCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("the permit's own pressure governs; a screening form does not");

  @Override
  public String id() {
    return "permit-unknown";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().injectionWells().stream()
        .filter(well -> well.status().stays() && well.permitPressure().isEmpty())
        .map(well -> finding(well, limit(evidence, well)))
        .toList();
  }

  private static Optional<Computed<Pressure>> limit(Evidence evidence, InjectionWell well) {
    return evidence.cases().stream()
        .flatMap(c -> c.injections().stream())
        .filter(i -> i.wellId().equals(well.id()))
        .flatMap(i -> i.limit().stream())
        .findFirst();
  }

  private Finding finding(InjectionWell well, Optional<Computed<Pressure>> limit) {
    String held =
        limit
            .map(
                l ->
                    "it is held against "
                        + Versus.print(l.value(), Unit.PSI, 1)
                        + " by the screening form for its depth.")
            .orElse("its wellhead is held against nothing.");
    Finding finding =
        Finding.of(
                id(),
                Severity.LOOK,
                well.id(),
                well.name() + " has no permitted pressure typed; " + held,
                SOURCE)
            .mendedBy("Type the pressure and the rate the permit prints.");
    return limit.map(l -> finding.shownBy(l.working())).orElse(finding);
  }
}
