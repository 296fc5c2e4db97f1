package tankyard.engine.report.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.report.Examples;
import tankyard.engine.units.UnitSystem;

/** A table of levels where they count, one sentence where they do not. */
class LevelBlocksTest {
  private static List<Block> blocks(String example) throws IOException {
    return Page.SHEET.of(Examples.of(example), UnitSystem.FIELD).sections().stream()
        .filter(s -> s.title().startsWith("What would help"))
        .flatMap(s -> s.blocks().stream())
        .toList();
  }

  private static List<Block.Table> levels(List<Block> blocks) {
    return blocks.stream()
        .filter(Block.Table.class::isInstance)
        .map(Block.Table.class::cast)
        .filter(t -> t.title().startsWith("Least gauge reading by the level in Water tank"))
        .toList();
  }

  @Test
  void behindAHillOneSentenceSaysThatTheLevelDoesNotCount() throws IOException {
    List<Block> blocks = blocks("p2-sandstone-knob");
    // By hand 14.5 psi over the crest.
    assertThat(blocks)
        .contains(
            new Block.Words(
                "The level in Water tank does not count, filled from below or over its top: the"
                    + " crest 1,000 ft out on Water leg asks for 14.5 psi whatever stands in the"
                    + " tank."));
    assertThat(levels(blocks)).isEmpty();
  }

  @Test
  void onFlatGroundTheTableStartsAtPumpOff() throws IOException {
    List<Block.Table> tables = levels(blocks("p1-osage-bend"));
    assertThat(tables).hasSize(1);
    assertThat(tables.get(0).rows())
        .extracting(row -> row.get(0))
        .containsExactly("at pump-off", "half full", "full");
  }
}
