package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.study.Assumption;
import tankyard.engine.working.Caution;

/** What nobody typed and was taken instead, and what must be read with care. */
final class AssumptionSection {
  private AssumptionSection() {}

  static List<Section> of(Draft draft) {
    List<Section> found = new ArrayList<>();
    List<String> assumed = assumed(draft);
    if (!assumed.isEmpty()) {
      found.add(Section.of("Assumed, since nobody typed it", new Block.Points(assumed)));
    }
    List<String> cautions =
        draft.results().cases().stream()
            .flatMap(c -> c.cautions().stream())
            .map(Caution::words)
            .distinct()
            .toList();
    if (!cautions.isEmpty()) {
      found.add(Section.of("Read with care", new Block.Points(cautions)));
    }
    return found;
  }

  /** Things of which the same was assumed stand together. */
  private static List<String> assumed(Draft draft) {
    Map<String, List<String>> things = new LinkedHashMap<>();
    for (Assumption assumption : draft.results().assumptions()) {
      String key = assumption.words() + " (" + assumption.source().line() + ")";
      List<String> names = things.computeIfAbsent(key, k -> new ArrayList<>());
      if (!assumption.thingId().isEmpty()) {
        names.add(draft.nameOf(assumption.thingId()));
      }
    }
    List<String> points = new ArrayList<>();
    things.forEach(
        (words, names) ->
            points.add(names.isEmpty() ? words : String.join(", ", names) + ": " + words));
    return points;
  }
}
