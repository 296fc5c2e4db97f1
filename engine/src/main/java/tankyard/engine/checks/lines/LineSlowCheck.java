package tankyard.engine.checks.lines;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/**
 * Lines too slow to carry their sand and water along in any case. Low-rate lines nearly always are,
 * so this is said once for the whole lease.
 */
public final class LineSlowCheck implements Check {
  static final double LEAST_FT_PER_S = 3;

  private static final Source SOURCE =
      Source.memory("API RP 14E sec. 2.3: keep sand and water moving");

  @Override
  public String id() {
    return "line-slow";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Map<String, Double> fastest = new LinkedHashMap<>();
    for (CaseResult result : evidence.cases()) {
      for (LineResult line : result.lines()) {
        fastest.merge(line.lineId(), line.velocityFtPerS(), Math::max);
      }
    }
    List<Map.Entry<String, Double>> slow =
        fastest.entrySet().stream()
            .filter(e -> e.getValue() > 0 && e.getValue() < LEAST_FT_PER_S)
            .sorted(Map.Entry.comparingByValue())
            .toList();
    return slow.isEmpty() ? List.of() : List.of(finding(evidence, slow, fastest.size()));
  }

  private Finding finding(Evidence evidence, List<Map.Entry<String, Double>> slow, int lines) {
    Versus speed = Versus.of(slow.get(0).getValue(), LEAST_FT_PER_S, Unit.FOOT_PER_SECOND, 2);
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            slow.size()
                + " of "
                + lines
                + " lines never reach the "
                + speed.limit()
                + " that keeps sand and water moving; the slowest is "
                + evidence.nameOf(slow.get(0).getKey())
                + " at "
                + speed.value()
                + ". Low-rate lines nearly always are.",
            SOURCE)
        .mendedBy(
            "Leave a way to flush or pig the line, and a drain at its low points.",
            "A smaller line runs faster, where the pressure lost allows it.");
  }
}
