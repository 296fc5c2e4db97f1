package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.AtFullFlow;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A stuffing box feels more than it is trusted with. */
public final class BoxLimitCheck implements Check {
  private static final double SLIP_PSI = 1e-9;
  private static final Source SOURCE =
      Source.definition("pressure at the box with the regulator built up, against its limit");

  @Override
  public String id() {
    return "box-over-limit";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      AtFullFlow atFlow = AtFullFlow.of(evidence, result);
      for (WellResult well : result.wells()) {
        double box = atFlow.boxPsi(well);
        well.limit()
            .filter(limit -> box > limit.toPsi() + SLIP_PSI)
            .ifPresent(
                limit ->
                    worst.add(
                        well.wellId(),
                        box - limit.toPsi(),
                        () -> finding(evidence, result, well, box, limit)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, WellResult well, double box, Pressure limit) {
    Versus psi = Versus.of(box, limit.toPsi(), Unit.PSI, 1);
    boolean weight = evidence.lease().thing(well.separatorId()).get() instanceof GunBarrel;
    return Finding.of(
            id(),
            Severity.FIX,
            well.wellId(),
            evidence.nameOf(well.wellId())
                + "'s stuffing box feels "
                + psi.value()
                + (weight ? " under the gun barrel's weight" : " with the regulator built up")
                + "; it is trusted with "
                + psi.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            weight
                ? "Nothing can lower a gun barrel's weight: a lower inlet, or a separator."
                : "Lower the least, so that the regulator can be set lower.",
            "Lay a bigger flow line: line loss is "
                + Versus.print(well.friction(), Unit.PSI, 1)
                + " of it, height "
                + Versus.print(well.lift(), Unit.PSI, 1)
                + ".",
            "Fit a stuffing box that stands more.")
        .shownBy(well.box().working());
  }
}
