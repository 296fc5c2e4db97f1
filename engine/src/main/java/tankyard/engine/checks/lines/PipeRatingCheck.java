package tankyard.engine.checks.lines;

import java.util.List;
import tankyard.engine.checks.AtFullFlow;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.Service;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A pipe sees more than it stands at its temperature with what is in it. */
public final class PipeRatingCheck implements Check {
  private static final Source SOURCE =
      Source.definition("highest pressure with the regulator built up, against the pipe's rating");

  @Override
  public String id() {
    return "pipe-over-rating";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      AtFullFlow full = AtFullFlow.of(evidence, result);
      for (LineResult line : result.lines()) {
        double highest = full.highestPsi(line);
        line.rating()
            .filter(rating -> highest > rating.toPsi())
            .ifPresent(
                rating ->
                    worst.add(
                        line.lineId(),
                        highest - rating.toPsi(),
                        () -> finding(evidence, result, line, highest, rating)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, LineResult line, double highest, Pressure rating) {
    Versus psi = Versus.of(highest, rating.toPsi(), Unit.PSI, 1);
    return Finding.of(
            id(),
            Severity.STOP,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " sees "
                + psi.value()
                + "; its pipe is rated "
                + psi.limit()
                + " at "
                + Versus.print(line.temperatures().rated(), Unit.FAHRENHEIT, 0)
                + " with "
                + inside(line.service())
                + " inside.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Lay pipe of a heavier class, or steel.",
            "Lay a bigger line, which loses less on the way.",
            "Keep plastic pipe out of the sun: what it stands falls fast with heat.");
  }

  private static String inside(Service service) {
    return switch (service) {
      case WATER_LEG, SUCTION, INJECTION, WATER_RETURN -> "water";
      default -> "oil";
    };
  }
}
