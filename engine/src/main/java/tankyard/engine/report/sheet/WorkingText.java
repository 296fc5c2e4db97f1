package tankyard.engine.report.sheet;

import java.util.List;
import java.util.stream.Collectors;
import tankyard.engine.report.doc.NumberedWorking;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** One working as text: title, formula with its result, inputs, source. */
final class WorkingText {
  private static final String INDENT = "      ";

  private WorkingText() {}

  static String print(NumberedWorking numbered, int width) {
    Working working = numbered.working();
    StringBuilder out = new StringBuilder();
    out.append(Wrap.hanging(mark(numbered.number()), working.title(), width));
    out.append(Wrap.hanging(INDENT, working.line(), width));
    int symbols = working.terms().stream().mapToInt(t -> t.symbol().length()).max().orElse(0);
    int values = working.terms().stream().mapToInt(t -> value(t).length()).max().orElse(0);
    for (Term term : working.terms()) {
      String head = INDENT + "  " + padded(term.symbol(), symbols) + " = ";
      out.append(Wrap.hanging(head + padded(value(term), values) + "  ", term.name(), width));
    }
    out.append(Wrap.hanging(INDENT, "Source: " + working.source().line(), width));
    if (!numbered.from().isEmpty()) {
      out.append(Wrap.hanging(INDENT, "Inputs worked out in " + marks(numbered.from()), width));
    }
    return out.toString();
  }

  private static String mark(int number) {
    return padded("[" + number + "]", INDENT.length() - 1) + " ";
  }

  private static String marks(List<Integer> numbers) {
    return numbers.stream().map(n -> "[" + n + "]").collect(Collectors.joining(", "));
  }

  private static String value(Term term) {
    return term.unit().symbol().isEmpty()
        ? term.digits()
        : term.digits() + " " + term.unit().symbol();
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
