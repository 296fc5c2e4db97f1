package tankyard.engine.quick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.working.Caution;

/** What a quick sum found, the chief number first. */
public record QuickResult(List<QuickAnswer> answers, List<Caution> cautions) {
  public QuickResult {
    answers = List.copyOf(answers);
    cautions = List.copyOf(cautions);
    if (answers.isEmpty()) {
      throw new IllegalArgumentException("A quick sum must answer something");
    }
  }

  /** The answers and every caution that comes with one of them. */
  public static QuickResult of(QuickAnswer... answers) {
    List<Caution> cautions =
        Arrays.stream(answers).flatMap(a -> a.value().cautions().stream()).distinct().toList();
    return new QuickResult(List.of(answers), cautions);
  }

  public QuickResult and(List<QuickAnswer> more) {
    QuickResult other = of(more.toArray(QuickAnswer[]::new));
    List<QuickAnswer> all = new ArrayList<>(answers);
    all.addAll(more);
    return new QuickResult(all, cautions).saying(other.cautions());
  }

  public QuickResult saying(List<Caution> more) {
    return new QuickResult(
        answers, Stream.concat(cautions.stream(), more.stream()).distinct().toList());
  }
}
