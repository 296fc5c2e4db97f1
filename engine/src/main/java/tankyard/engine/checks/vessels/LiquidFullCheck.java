package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SeparatorResult;
import tankyard.engine.study.VesselGas;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/** So much gas comes that the separator can't stand full of liquid: its window does not hold. */
public final class LiquidFullCheck implements Check {
  @Override
  public String id() {
    return "gas-in-full-vessel";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (SeparatorResult separator : result.separators()) {
        separator
            .gas()
            .filter(VesselGas::breaksFull)
            .ifPresent(
                gas ->
                    worst.add(
                        separator.separatorId(),
                        gas.part().value().ratio(),
                        () -> finding(evidence, result, separator, gas)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, SeparatorResult separator, VesselGas gas) {
    Versus part =
        Versus.of(100 * gas.part().value().ratio(), 100 * VesselGas.MOST.ratio(), Unit.PERCENT, 1);
    return Finding.of(
            id(),
            Severity.FIX,
            separator.separatorId(),
            evidence.nameOf(separator.separatorId())
                + ": "
                + part.value()
                + " of what comes in at "
                + Figures.decimals(gas.gauge().toPsi(), 1)
                + " psi is gas, more than the "
                + part.limit()
                + " with which it counts as full of liquid. Gas will fill its top, and the window"
                + " is not valid.",
            VesselGas.MOST_SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Take the gas off: a gas outlet with a regulator of its own, or a gas boot before it,"
                + " upright and at least "
                + Figures.decimals(gas.section().value().in(Unit.INCH), 1)
                + " in across.",
            "Take the gas off at the wells' casing.")
        .shownBy(gas.part().working());
  }
}
