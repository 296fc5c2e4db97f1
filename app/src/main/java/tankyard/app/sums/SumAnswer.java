package tankyard.app.sums;

import java.util.List;
import java.util.function.Supplier;
import tankyard.engine.working.Working;

/**
 * What a sum gives for what was typed.
 *
 * @param message what is still missing or does not go together; empty where there is an answer
 * @param numbers the chief one first
 * @param cautions what must be said with them
 */
record SumAnswer(String message, List<Number> numbers, List<String> cautions) {

  /** One number. */
  record Number(String title, String text, Supplier<Working> working) {}

  SumAnswer {
    numbers = List.copyOf(numbers);
    cautions = List.copyOf(cautions);
  }

  static SumAnswer none(String message) {
    return new SumAnswer(message, List.of(), List.of());
  }
}
