package tankyard.engine.checks.site;

import java.util.Comparator;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.Assumption;
import tankyard.engine.working.Source;

/** How many values nobody typed, and those which move the answers most. */
public final class AssumedCheck implements Check {
  private static final int MOST_NAMED = 4;

  /** How such values begin, in the order of how far they usually move the window. By judgement. */
  private static final List<String> TELLING =
      List.of(
          "design water over",
          "regulator builds up",
          "dump valve works",
          "oil viscosity from",
          "interface stands",
          "ground in winter",
          "the road may be out",
          "nobody looks for");

  private static final Source SOURCE = Source.commonPractice("field habit, value by value");

  @Override
  public String id() {
    return "values-assumed";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Assumption> assumed = evidence.assumptions();
    return assumed.isEmpty() ? List.of() : List.of(finding(assumed));
  }

  private Finding finding(List<Assumption> assumed) {
    String count =
        assumed.size() == 1
            ? "1 value is assumed, by habit: "
            : assumed.size() + " values are assumed, by habit, among them: ";
    return Finding.of(
            id(), Severity.NOTE, "", count + String.join("; ", named(assumed)) + ".", SOURCE)
        .mendedBy("Type what you know; each is listed with the value taken.");
  }

  /** The telling ones first, then the others as they come; what many things share counts once. */
  private static List<String> named(List<Assumption> assumed) {
    return assumed.stream()
        .map(Assumption::words)
        .distinct()
        .sorted(Comparator.comparingInt(AssumedCheck::rank))
        .limit(MOST_NAMED)
        .toList();
  }

  private static int rank(String words) {
    for (int i = 0; i < TELLING.size(); i++) {
      if (words.startsWith(TELLING.get(i))) {
        return i;
      }
    }
    return TELLING.size();
  }
}
