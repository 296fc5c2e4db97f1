package tankyard.engine.report.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.report.Examples;
import tankyard.engine.units.UnitSystem;

/** The lines in summer and winter, and what is shown where one season has no case. */
class ColdTableTest {
  private static Block.Table first(String example) throws IOException {
    return LeaseReport.of(Examples.of(example), UnitSystem.FIELD).sections().stream()
        .filter(s -> s.title().equals("Summer and winter"))
        .flatMap(s -> s.blocks().stream())
        .filter(Block.Table.class::isInstance)
        .map(Block.Table.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static List<String> heads(Block.Table table) {
    return table.columns().stream().map(Block.Column::head).toList();
  }

  @Test
  void aSeasonWithoutACaseHasNoColumn() throws IOException {
    Block.Table creek = first("p3-coyote-creek");

    assertThat(heads(creek)).hasSize(7).noneMatch(h -> h.contains("winter"));
    assertThat(creek.rows()).isNotEmpty().allSatisfy(row -> assertThat(row).hasSize(7));
    assertThat(creek.rows()).allSatisfy(row -> assertThat(row.subList(0, 6)).doesNotContain("-"));
  }

  @Test
  void bothSeasonsStandSideBySideWhereBothHaveACase() throws IOException {
    Block.Table wax = first("p6-black-wax");

    assertThat(heads(wax)).hasSize(12).filteredOn(h -> h.contains("winter")).hasSize(5);
    assertThat(wax.rows()).allSatisfy(row -> assertThat(row).hasSize(12));
  }
}
