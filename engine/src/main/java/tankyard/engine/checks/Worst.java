package tankyard.engine.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Of what a check finds case by case, the case in which it is worst, thing by thing. The words are
 * only written for that one; where two cases are alike the first counts.
 */
public final class Worst {
  private final Map<String, Candidate> byKey = new LinkedHashMap<>();

  private record Candidate(double by, Supplier<Finding> finding) {}

  /**
   * Offers a finding.
   *
   * @param key the thing's id, or what else makes findings one
   * @param by how bad it is: the larger the worse, in any unit
   */
  public void add(String key, double by, Supplier<Finding> finding) {
    byKey.merge(key, new Candidate(by, finding), (a, b) -> b.by() > a.by() ? b : a);
  }

  /** One finding for each key, in the order they were first met. */
  public List<Finding> findings() {
    List<Finding> found = new ArrayList<>();
    byKey.values().forEach(candidate -> found.add(candidate.finding().get()));
    return List.copyOf(found);
  }
}
