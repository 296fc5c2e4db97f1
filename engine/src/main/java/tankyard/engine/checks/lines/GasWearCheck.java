package tankyard.engine.checks.lines;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GasInLine;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** Gas and liquid run faster through a line than its wall may bear for long. */
public final class GasWearCheck implements Check {
  private static final Source SOURCE =
      Source.published(
          "API RP 14E, C/sqrt(density) with C 100 for steady flow without solids, as quoted; its"
              + " basis is disputed");

  @Override
  public String id() {
    return "gas-line-wear";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (LineResult line : result.lines()) {
        line.gas()
            .flatMap(GasInLine::wearSpeed)
            .filter(limit -> line.velocityFtPerS() > limit.value().toFeetPerSecond())
            .ifPresent(
                limit ->
                    worst.add(
                        line.lineId(),
                        line.velocityFtPerS() / limit.value().toFeetPerSecond(),
                        () -> finding(evidence, result, line, limit)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, LineResult line, Computed<Speed> limit) {
    Versus speed =
        Versus.of(line.velocityFtPerS(), limit.value().toFeetPerSecond(), Unit.FOOT_PER_SECOND, 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " runs at "
                + speed.value()
                + " of gas and liquid, more than the "
                + speed.limit()
                + " above which its wall may wear.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy("Lay the next size up, or take gas off at the well.")
        .shownBy(limit.working());
  }
}
