package tankyard.engine.quick.cli;

import java.util.LinkedHashSet;
import java.util.Set;
import tankyard.engine.quick.QuickAnswer;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValue;
import tankyard.engine.quick.sums.AllSums;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** A quick sum as a person reads it. */
final class SumText {
  private static final String CLOSING =
      "Planning aid, not an engineer's design; field-check heights and pressures.\n";

  private final StringBuilder page = new StringBuilder();
  private final Set<Working> shown = new LinkedHashSet<>();

  private SumText() {}

  static String list() {
    StringBuilder list =
        new StringBuilder("Quick sums (\"sum ID --help\" says what each takes):\n");
    for (QuickSum sum : AllSums.list()) {
      list.append("  %-17s %s\n".formatted(sum.id(), sum.title()));
    }
    return list.toString();
  }

  static String of(Solved solved) {
    SumText text = new SumText();
    text.page.append(solved.sum().title()).append("\n\n");
    int width = widest(solved);
    solved.values().all().forEach(v -> text.input(v, width));
    text.page.append('\n');
    solved.result().answers().forEach(a -> text.answer(a, width));
    text.page.append("\nHow it was worked out\n");
    solved.result().answers().forEach(a -> text.working(a.value().working()));
    for (Caution caution : solved.result().cautions()) {
      text.page.append("\nNote: ").append(caution.words()).append('\n');
    }
    return text.page.append('\n').append(CLOSING).toString();
  }

  private static int widest(Solved solved) {
    int width =
        solved.result().answers().stream().mapToInt(a -> a.title().length()).max().orElse(0);
    for (QuickValue value : solved.values().all()) {
      width = Math.max(width, value.input().title().length());
    }
    return width;
  }

  private void input(QuickValue value, int width) {
    String why = value.assumed() ? "   assumed: " + value.input().why() : "";
    page.append("  ")
        .append(padded(value.input().title(), width))
        .append(value.text())
        .append(why)
        .append('\n');
  }

  private static String padded(String words, int width) {
    return words + " ".repeat(width + 2 - words.length());
  }

  private void answer(QuickAnswer answer, int width) {
    page.append("  ").append(padded(answer.title(), width)).append(answer.print()).append('\n');
  }

  /** Each working once, those it builds on first. */
  private void working(Working working) {
    if (!shown.add(working)) {
      return;
    }
    working.from().forEach(this::working);
    page.append("  ").append(working.title()).append(": ").append(working.line()).append('\n');
    for (Term term : working.terms()) {
      page.append("      ").append(term.line()).append('\n');
    }
    page.append("      ").append(working.source().line()).append('\n');
  }
}
