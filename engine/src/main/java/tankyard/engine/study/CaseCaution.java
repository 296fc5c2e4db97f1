package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What must be read with care in one case, once for each kind.
 *
 * @param id short and stable, as the law gives it
 * @param words one sentence; where it holds for several things, that of the first of them
 * @param things ids of the lines and vessels it holds for; none where it is the whole lease
 */
public record CaseCaution(String id, String words, List<String> things) {
  public CaseCaution {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(words, "words");
    things = List.copyOf(things);
  }

  /**
   * Of all cases together, once for each kind. Where the words differ the coldest case's are told:
   * there laws fail; the things of that case come first.
   */
  public static List<CaseCaution> together(List<CaseResult> cases) {
    Map<String, CaseCaution> words = new LinkedHashMap<>();
    Map<String, Set<String>> things = new LinkedHashMap<>();
    for (CaseResult result : coldestFirst(cases)) {
      for (CaseCaution caution : result.cautions()) {
        words.putIfAbsent(caution.id(), caution);
        things.computeIfAbsent(caution.id(), id -> new LinkedHashSet<>()).addAll(caution.things());
      }
    }
    return words.values().stream()
        .map(c -> new CaseCaution(c.id(), c.words(), List.copyOf(things.get(c.id()))))
        .toList();
  }

  /** The cases by the ground at their lines; those alike stay in their order. */
  public static List<CaseResult> coldestFirst(List<CaseResult> cases) {
    List<CaseResult> sorted = new ArrayList<>(cases);
    sorted.sort(Comparator.comparingDouble(CaseCaution::groundK));
    return sorted;
  }

  private static double groundK(CaseResult result) {
    return result.lines().stream()
        .mapToDouble(l -> l.temperatures().ground().kelvins())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
