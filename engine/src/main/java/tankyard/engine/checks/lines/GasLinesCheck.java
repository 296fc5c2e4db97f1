package tankyard.engine.checks.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GasInLine;
import tankyard.engine.study.LineResult;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Source;

/** What the march of gas and liquid says must be read with care, line by line. */
public final class GasLinesCheck implements Check {
  /** Here the pressure printed is no answer. */
  private static final String NEAR_SOUND = "gas-near-sound";

  private static final int MOST_NAMED = 4;
  private static final Source SOURCE =
      Source.definition("the range of Beggs and Brill's correlation and of the march");

  @Override
  public String id() {
    return "gas-lines";
  }

  @Override
  public Set<String> gives() {
    return Set.of(
        "gas-liquid-correlation",
        "gas-liquid-downhill",
        "gas-liquid-no-vacuum",
        "gas-fast",
        NEAR_SOUND);
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Map<String, Caution> said = new LinkedHashMap<>();
    Map<String, Set<String>> lines = new LinkedHashMap<>();
    for (CaseResult result : evidence.cases()) {
      for (LineResult line : result.lines()) {
        for (Caution caution : line.gas().map(GasInLine::cautions).orElse(List.of())) {
          said.putIfAbsent(caution.id(), caution);
          lines.computeIfAbsent(caution.id(), id -> new TreeSet<>()).add(line.lineId());
        }
      }
    }
    List<Finding> found = new ArrayList<>();
    said.forEach((id, caution) -> found.add(finding(evidence, caution, lines.get(id))));
    return found;
  }

  private static Finding finding(Evidence evidence, Caution caution, Set<String> lines) {
    String first = lines.iterator().next();
    List<String> names = lines.stream().limit(MOST_NAMED).map(evidence::nameOf).toList();
    String more = lines.size() > MOST_NAMED ? " and " + (lines.size() - MOST_NAMED) + " more" : "";
    Severity severity = caution.id().equals(NEAR_SOUND) ? Severity.FIX : Severity.LOOK;
    return Finding.of(
        caution.id(),
        severity,
        lines.size() == 1 ? first : "",
        String.join(", ", names) + more + ": " + caution.words(),
        SOURCE);
  }
}
