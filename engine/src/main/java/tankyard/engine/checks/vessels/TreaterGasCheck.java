package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.TreaterResult;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A heater-treater would burn more gas than the wells send. */
public final class TreaterGasCheck implements Check {
  private static final Source SOURCE = Source.definition("gas burnt against the gas of all wells");

  @Override
  public String id() {
    return "treater-gas-short";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      result.treater().ifPresent(treater -> look(worst, result, treater));
    }
    return worst.findings();
  }

  private void look(Worst worst, CaseResult result, TreaterResult treater) {
    double burns = treater.gas().value().si();
    treater
        .wellsGas()
        .filter(wells -> burns > wells.si())
        .ifPresent(
            wells -> worst.add("", burns - wells.si(), () -> finding(result, treater, wells)));
  }

  private Finding finding(CaseResult result, TreaterResult treater, GasRate wells) {
    Versus gas = Versus.of(treater.gas().value(), wells, Unit.MCF_PER_DAY, 1);
    String propane = Versus.print(treater.propane().value(), Unit.GALLON, 0);
    return Finding.of(
            id(),
            Severity.LOOK,
            "",
            "A heater-treater would burn "
                + gas.value()
                + " of gas; the wells send "
                + gas.limit()
                + ", and not all of it can be caught.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Knock more water out before it: water takes most of the heat.",
            "Or " + propane + " of propane a month.")
        .shownBy(treater.gas().working());
  }
}
