package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Status;
import tankyard.engine.study.LaidLine;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** New lines to be trenched. */
public final class DigCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("the one-call office first, hand-expose what is marked");

  @Override
  public String id() {
    return "call-before-digging";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<LaidLine> toDig =
        evidence.survey().laid().values().stream()
            .filter(laid -> laid.line().status() == Status.NEW)
            .filter(laid -> DeepTrenchCheck.deepest(evidence.lease(), laid.line()).metres() > 0)
            .toList();
    if (toDig.isEmpty()) {
      return List.of();
    }
    double feet = toDig.stream().mapToDouble(l -> Unit.FOOT.fromSi(l.trenchM())).sum();
    return List.of(
        Finding.of(
                id(),
                Severity.NOTE,
                "",
                toDig.size()
                    + (toDig.size() == 1 ? " new line is" : " new lines are")
                    + " to be trenched, "
                    + Versus.print(feet, Unit.FOOT, 0)
                    + " in all. Other people's lines may cross, and old ones of your own.",
                SOURCE)
            .mendedBy("Call 811 before digging, and hand-expose every line that is marked."));
  }
}
