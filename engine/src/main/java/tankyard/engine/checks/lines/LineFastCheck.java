package tankyard.engine.checks.lines;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A liquid line runs faster than is good for it. */
public final class LineFastCheck implements Check {
  static final double MOST_FT_PER_S = 15;

  private static final Source SOURCE =
      Source.published("API RP 14E sec. 2.3: liquid lines, as quoted in a line-sizing sheet");

  @Override
  public String id() {
    return "line-fast";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (LineResult line : result.lines()) {
        if (line.gas().isEmpty() && line.velocityFtPerS() > MOST_FT_PER_S) {
          worst.add(line.lineId(), line.velocityFtPerS(), () -> finding(evidence, result, line));
        }
      }
    }
    return worst.findings();
  }

  private Finding finding(Evidence evidence, CaseResult result, LineResult line) {
    Versus speed = Versus.of(line.velocityFtPerS(), MOST_FT_PER_S, Unit.FOOT_PER_SECOND, 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " runs at "
                + speed.value()
                + " ("
                + line.flowWords()
                + "), more than the "
                + speed.limit()
                + " liquid lines are kept below: it wears and hammers.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy("Lay the next size up.");
  }
}
