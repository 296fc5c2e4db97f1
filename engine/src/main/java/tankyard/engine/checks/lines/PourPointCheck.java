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
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A line in which the oil carries the water runs colder than the oil pours. */
public final class PourPointCheck implements Check {
  private static final Source SOURCE =
      Source.definition("coldest place of the running line against the oil's pour point");

  @Override
  public String id() {
    return "line-below-pour-point";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    evidence
        .lease()
        .fluids()
        .pourPoint()
        .ifPresent(
            pour -> {
              for (CaseResult result : evidence.cases()) {
                for (LineResult line : result.lines()) {
                  double below = pour.toFahrenheit() - coldest(line);
                  if (line.oilCarries() && below > 0) {
                    worst.add(line.lineId(), below, () -> finding(evidence, result, line, pour));
                  }
                }
              }
            });
    return worst.findings();
  }

  private static double coldest(LineResult line) {
    return Math.min(
        line.temperatures().start().toFahrenheit(), line.temperatures().end().toFahrenheit());
  }

  private Finding finding(Evidence evidence, CaseResult result, LineResult line, Temperature pour) {
    Versus versus = Versus.of(coldest(line), pour.toFahrenheit(), Unit.FAHRENHEIT, 0);
    return Finding.of(
            id(),
            Severity.LOOK,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " cools to "
                + versus.value()
                + " while it runs; the oil pours down to "
                + versus.limit()
                + ". Wax comes out on the wall, and what stands there gels.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Bring produced water back to the wells until the water carries the oil.",
            "Pig it, or treat for wax, before the cold months.",
            "Drain it down or displace it with water before any planned stop.");
  }
}
