package tankyard.engine.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.report.doc.Block;
import tankyard.engine.report.doc.Block.Column;

class TextTableTest {
  private static Block.Table table(List<List<String>> rows) {
    return new Block.Table(
        "", List.of(Column.text("well"), Column.number("box, psi"), Column.text("note")), rows);
  }

  @Test
  void wordsStandLeftAndNumbersRight() {
    String text =
        new TextTable(table(List.of(List.of("Well 1", "12.1", "a"), List.of("W", "8.1", "b"))), 60)
            .print();

    assertThat(text)
        .isEqualTo(
            """
            well    box, psi  note
            ------  --------  ----
            Well 1      12.1  a
            W            8.1  b
            """);
  }

  @Test
  void aLongCellWrapsInItsColumnAndThePageHolds() {
    String text =
        new TextTable(
                table(List.of(List.of("Well 1", "12.1", "one two three four five six seven"))), 30)
            .print();

    assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(30));
    assertThat(text).contains("one two").contains("seven");
    assertThat(text.lines().filter(l -> l.contains("12.1"))).hasSize(1);
  }
}
