package tankyard.engine.report.doc;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tankyard.engine.lease.Line;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.LineTemperatures;
import tankyard.engine.units.Temperature;

/** How warm the pipe of legs is rated where more than the ground warms it. */
final class LegsRated {
  private static final double WARMER_K = 0.05;

  private LegsRated() {}

  /** Empty where every line is rated as warm as one of its ends. */
  static String words(Draft draft) {
    List<String> legs =
        draft.results().lease().lines().stream()
            .flatMap(
                line ->
                    warmest(draft, line).stream()
                        .map(t -> line.name() + " at " + draft.words(Figure.WARMTH, t)))
            .toList();
    return legs.isEmpty()
        ? ""
        : legs.stream()
            .collect(
                Collectors.joining(
                    ", ",
                    " The pipe of a leg is rated as warm as the warmest that comes into its"
                        + " vessel, in the warmest case: ",
                    "."));
  }

  private static Optional<Temperature> warmest(Draft draft, Line line) {
    return draft.results().cases().stream()
        .flatMap(c -> c.line(line.id()).stream())
        .map(LineResult::temperatures)
        .filter(LegsRated::isWarmed)
        .map(LineTemperatures::rated)
        .max(Comparator.comparingDouble(Temperature::kelvins));
  }

  private static boolean isWarmed(LineTemperatures line) {
    double ends = Math.max(line.start().kelvins(), line.end().kelvins());
    return line.rated().kelvins() > ends + WARMER_K;
  }
}
