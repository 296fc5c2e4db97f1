package tankyard.engine.quick.cli;

import tankyard.engine.quick.QuickInput;
import tankyard.engine.quick.QuickSum;

/** Inputs in words, for help texts. */
final class Example {
  private Example() {}

  /** A line that can be typed: every input that must be. */
  static String line(QuickSum sum) {
    StringBuilder line = new StringBuilder(sum.id());
    for (QuickInput input : sum.inputs()) {
      if (input.needed()) {
        line.append(" --").append(input.id()).append(" \"").append(input.example()).append('"');
      }
    }
    return line.toString();
  }

  static String describe(QuickInput input) {
    StringBuilder words = new StringBuilder(input.title());
    if (!input.choices().isEmpty()) {
      words.append(": ").append(String.join(", ", input.choices()));
    }
    input
        .usual()
        .ifPresent(
            u ->
                words
                    .append(". Not typed: ")
                    .append(u)
                    .append(" (")
                    .append(input.why())
                    .append(")"));
    if (input.usual().isEmpty() && !input.needed()) {
      words.append(". May be left out");
    }
    return words.append('.').toString();
  }
}
