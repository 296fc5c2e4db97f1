package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tankyard.engine.checks.Several;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.CaseCaution;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.NetworkAudit;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** What nobody typed and was taken instead, what must be read with care, and how it adds up. */
final class AssumptionSection {
  private static final double NEXT_TO_NONE = 1e-6;

  private AssumptionSection() {}

  static List<Section> of(Draft draft) {
    List<Section> found = new ArrayList<>();
    List<Block> assumed = assumed(draft);
    if (!assumed.isEmpty()) {
      found.add(new Section("Assumed, since nobody typed it", assumed));
    }
    List<String> cautions =
        CaseCaution.together(draft.results().cases()).stream()
            .filter(caution -> !isFinding(draft, caution))
            .map(caution -> words(draft, caution))
            .toList();
    if (!cautions.isEmpty()) {
      found.add(Section.of("Read with care", new Block.Points(cautions)));
    }
    found.add(Section.of("Added up again", new Block.Points(audits(draft))));
    return found;
  }

  /** Told in full, with its severity, among the findings. */
  private static boolean isFinding(Draft draft, CaseCaution caution) {
    return draft.results().findings().stream()
        .anyMatch(f -> f.id().equals(caution.id()) && f.words().endsWith(caution.words()));
  }

  /** Of every part that is solved together, the case that fits worst. */
  private static List<String> audits(Draft draft) {
    Map<String, NetworkAudit> worst = new LinkedHashMap<>();
    for (CaseResult each : draft.results().cases()) {
      for (NetworkAudit audit : each.audits()) {
        worst.merge(
            audit.lines(),
            audit,
            (a, b) -> b.energyLeft().pascals() > a.energyLeft().pascals() ? b : a);
      }
    }
    return worst.values().stream().map(AssumptionSection::words).toList();
  }

  private static String words(NetworkAudit audit) {
    String name =
        audit.lines().substring(0, 1).toUpperCase(Locale.ROOT) + audit.lines().substring(1);
    return name
        + " lines, worst case: "
        + left(audit.massLeft().in(Unit.BARREL_PER_DAY))
        + " bbl/d left over of "
        + Figures.significant(audit.throughput().in(Unit.BARREL_PER_DAY), 3)
        + ", "
        + left(audit.energyLeft().toPsi())
        + " psi along the worst line.";
  }

  private static String left(double amount) {
    return amount < NEXT_TO_NONE ? "less than 0.000001" : Figures.significant(amount, 1);
  }

  /** Each kind once, with the lines and vessels it holds for. */
  private static String words(Draft draft, CaseCaution caution) {
    String things = Several.named(caution.things().stream().map(draft::nameOf).toList());
    return things.isEmpty() ? caution.words() : things + ": " + caution.words();
  }

  /** By where the value comes from; things of which the same was assumed stand together. */
  private static List<Block> assumed(Draft draft) {
    Map<Source, Map<String, List<String>>> bySource = new LinkedHashMap<>();
    for (Assumption assumption : draft.results().assumptions()) {
      List<String> names =
          bySource
              .computeIfAbsent(assumption.source(), s -> new LinkedHashMap<>())
              .computeIfAbsent(assumption.words(), w -> new ArrayList<>());
      if (!assumption.thingId().isEmpty()) {
        names.add(draft.nameOf(assumption.thingId()));
      }
    }
    List<Block> blocks = new ArrayList<>();
    bySource.forEach(
        (source, things) -> {
          blocks.add(new Block.Words("From " + source.line() + ":"));
          blocks.add(new Block.Points(points(things)));
        });
    return blocks;
  }

  private static List<String> points(Map<String, List<String>> things) {
    List<String> points = new ArrayList<>();
    things.forEach(
        (words, names) ->
            points.add(names.isEmpty() ? words : String.join(", ", names) + ": " + words));
    return points;
  }
}
