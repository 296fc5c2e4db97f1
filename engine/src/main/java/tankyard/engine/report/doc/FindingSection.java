package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import tankyard.engine.checks.Finding;

/** The findings, worst first, each with its way out. */
final class FindingSection {
  private FindingSection() {}

  static List<Section> of(Draft draft) {
    List<Finding> ranked = ranked(draft.results());
    if (ranked.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    ranked.forEach(f -> blocks.addAll(blocks(draft, f)));
    return List.of(new Section("Findings", blocks));
  }

  /** Worst first; alike ones as they were found. */
  static List<Finding> ranked(Results results) {
    return results.findings().stream().sorted(Comparator.comparing(Finding::severity)).toList();
  }

  private static List<Block> blocks(Draft draft, Finding finding) {
    String where = finding.caseId().map(c -> " [case: " + draft.nameOf(c) + "]").orElse("");
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Words(
            finding.severity().words().toUpperCase(Locale.ROOT)
                + "  "
                + finding.id()
                + ": "
                + finding.words()
                + where
                + finding.working().map(w -> " " + draft.mark(w)).orElse("")));
    List<String> points = new ArrayList<>();
    finding.wayOut().forEach(way -> points.add("Way out: " + way));
    points.add("Source: " + finding.source().line());
    blocks.add(new Block.Points(points));
    return blocks;
  }
}
