package tankyard.engine.checks.lines;

import java.util.List;
import tankyard.engine.checks.AtFullFlow;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A cold laminar loss holds under the pipe's rating, and twice of it would not. */
public final class ColdLaminarCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice(
          "sums for cold oil in laminar flow carry a factor of two, as its viscosity does");

  @Override
  public String id() {
    return "cold-laminar";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      AtFullFlow full = AtFullFlow.of(evidence, result);
      for (LineResult line : result.lines()) {
        double once = full.highestPsi(line);
        double twice = once + line.friction().value().toPsi();
        line.rating()
            .filter(r -> line.isColdLaminar() && once <= r.toPsi() && twice > r.toPsi())
            .ifPresent(
                r ->
                    worst.add(
                        line.lineId(),
                        twice - r.toPsi(),
                        () -> finding(evidence, result, line, twice, r)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, LineResult line, double twice, Pressure rating) {
    Versus psi = Versus.of(twice, rating.toPsi(), Unit.PSI, 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " loses "
                + Versus.print(line.friction().value(), Unit.PSI, 1)
                + " in cold laminar flow, and such a sum carries a factor of two: twice of it would"
                + " make "
                + psi.value()
                + ", and its pipe stands "
                + psi.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Measure the viscosity of the emulsion, not of the oil alone, at the coldest ground,"
                + " before spending on pipe.")
        .shownBy(line.friction().working());
  }
}
