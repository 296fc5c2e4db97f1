package tankyard.engine.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Numbers of ours held against numbers from outside. A test class of any package implements this;
 * its rows are the two files {@code checks/TOPIC-examples.csv} (where an example comes from) and
 * {@code checks/TOPIC-values.csv} (its numbers), and docs/verification.md is written from all of
 * them.
 */
public interface CheckedRows {

  /** Stem of the two files, and heading on the page. */
  String topic();

  /** Our number for every row. */
  void compute(Answers answers);

  default Map<String, Double> answers() {
    Answers answers = new Answers();
    compute(answers);
    return answers.byRow();
  }

  default List<CheckRow> rows() {
    return CheckFiles.rows(topic());
  }

  @TestFactory
  default Stream<DynamicTest> every_row_holds() {
    Map<String, Double> answers = answers();
    return rows().stream()
        .map(
            row ->
                DynamicTest.dynamicTest(row.id(), () -> row.requireHolds(answers.get(row.id()))));
  }

  @Test
  default void rows_and_computations_match_one_to_one() {
    assertThat(answers().keySet())
        .containsExactlyInAnyOrderElementsOf(rows().stream().map(CheckRow::id).toList());
  }
}
