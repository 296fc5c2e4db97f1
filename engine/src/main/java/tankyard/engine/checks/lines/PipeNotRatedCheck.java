package tankyard.engine.checks.lines;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.working.Source;

/** Lines whose pipe nobody knows a rating of. */
public final class PipeNotRatedCheck implements Check {
  private static final Source SOURCE = Source.definition("the catalogue and the lease's own pipes");

  @Override
  public String id() {
    return "pipe-not-rated";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Set<String> unrated = new LinkedHashSet<>();
    for (CaseResult result : evidence.cases()) {
      result.lines().stream()
          .filter(line -> line.rating().isEmpty())
          .map(LineResult::lineId)
          .forEach(unrated::add);
    }
    if (unrated.isEmpty()) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    unrated.forEach(id -> names.add(evidence.nameOf(id)));
    return List.of(
        Finding.of(
                id(),
                Severity.NOTE,
                "",
                "What these lines stand is not known, so it is not checked: "
                    + Several.named(names)
                    + ".",
                SOURCE)
            .mendedBy("Type the rating of the pipe, with oil inside and with water inside."));
  }
}
