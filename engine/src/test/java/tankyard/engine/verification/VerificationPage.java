package tankyard.engine.verification;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import tankyard.engine.units.Figures;

/** Writes docs/verification.md. */
final class VerificationPage {
  private static final String HEAD =
      """
      # Verification

      Our numbers beside numbers from outside the project. This page is written by
      `VerificationPageTest` from the rows under `engine/src/test/resources/checks`; a test fails
      when it is out of date. To write it anew:

          mvn -pl engine test -Dtest=VerificationPageTest -Dverification.write=true

      *How known*: **read** means the document itself was read; **second-hand** a restatement of it;
      **memory** means recalled and to be trusted less; **own** that the number is ours. A tolerance
      is half a unit of the last printed digit unless a note says more.

      """;

  private final StringBuilder page = new StringBuilder(HEAD);

  /** The whole page. */
  static String of(List<CheckedRows> topics) {
    VerificationPage writer = new VerificationPage();
    writer.summary(topics);
    topics.forEach(writer::topic);
    return writer.page.toString();
  }

  private void summary(List<CheckedRows> topics) {
    page.append("| topic | checked | wrong in print | pinned |\n|---|---|---|---|\n");
    for (CheckedRows topic : topics) {
      page.append(
          "| %s | %d | %d | %d |\n"
              .formatted(
                  topic.topic(),
                  count(topic, CheckRow.Kind.CHECKED),
                  count(topic, CheckRow.Kind.CORRECTED),
                  count(topic, CheckRow.Kind.PINNED)));
    }
  }

  private static long count(CheckedRows topic, CheckRow.Kind kind) {
    return topic.rows().stream().filter(r -> r.kind() == kind).count();
  }

  private void topic(CheckedRows topic) {
    Map<String, Double> answers = topic.answers();
    List<CheckRow> rows = topic.rows();
    page.append("\n## ").append(topic.topic()).append('\n');
    checked(rows.stream().filter(r -> r.kind() == CheckRow.Kind.CHECKED).toList(), answers);
    corrected(rows.stream().filter(r -> r.kind() == CheckRow.Kind.CORRECTED).toList(), answers);
    pinned(rows.stream().filter(r -> r.kind() == CheckRow.Kind.PINNED).toList(), answers);
    page.append("\nWhere they come from:\n\n");
    rows.stream().map(CheckRow::example).distinct().forEach(this::example);
  }

  private void checked(List<CheckRow> rows, Map<String, Double> answers) {
    if (rows.isEmpty()) {
      return;
    }
    page.append("\n| example | what | unit | ours | theirs | difference | tolerance | known |\n");
    page.append("|---|---|---|---|---|---|---|---|\n");
    for (CheckRow r : rows) {
      double ours = ours(r, answers);
      line(
          r.example().id(),
          r.what(),
          r.unit(),
          digits(ours),
          digits(r.target()),
          Figures.significant(ours - r.target(), 2),
          digits(r.tolerance()),
          r.example().known());
    }
  }

  private void corrected(List<CheckRow> rows, Map<String, Double> answers) {
    if (rows.isEmpty()) {
      return;
    }
    page.append("\nKnown to be wrong in print:\n\n");
    page.append("| example | what | unit | ours | right | printed | tolerance | known |\n");
    page.append("|---|---|---|---|---|---|---|---|\n");
    for (CheckRow r : rows) {
      line(
          r.example().id(),
          r.what(),
          r.unit(),
          digits(ours(r, answers)),
          digits(r.target()),
          digits(r.published().orElseThrow()),
          digits(r.tolerance()),
          r.example().known());
    }
  }

  private void pinned(List<CheckRow> rows, Map<String, Double> answers) {
    if (rows.isEmpty()) {
      return;
    }
    page.append(
        "\nPinned, no published number (these prove nothing but that we notice a change):\n\n");
    page.append("| example | what | unit | ours | pinned |\n|---|---|---|---|---|\n");
    for (CheckRow r : rows) {
      line(r.example().id(), r.what(), r.unit(), digits(ours(r, answers)), digits(r.target()));
    }
  }

  private void example(CheckExample e) {
    page.append("- **").append(e.id()).append("** ").append(e.title()).append(". ");
    if (!e.inputs().isBlank()) {
      page.append("Put in: ").append(e.inputs()).append(". ");
    }
    page.append("Source: ").append(e.source()).append(" (").append(e.known()).append(").");
    page.append(e.note().isBlank() ? "\n" : " " + e.note() + "\n");
  }

  private void line(String... cells) {
    page.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  private static double ours(CheckRow row, Map<String, Double> answers) {
    return Objects.requireNonNull(answers.get(row.id()), row.id());
  }

  private static String digits(double value) {
    return Figures.significant(value, 7);
  }
}
