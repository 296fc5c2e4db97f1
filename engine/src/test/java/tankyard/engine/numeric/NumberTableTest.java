package tankyard.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.Water;

class NumberTableTest {
  @Test
  void a_table_gives_its_columns_and_its_source() {
    NumberTable water = NumberTable.beside(Water.class, "water.csv");

    assertThat(water.source()).contains("IAPWS");
    assertThat(water.column("temperature_f")).hasSize(water.size()).contains(60);
  }

  @Test
  void a_missing_table_or_column_is_named() {
    assertThatThrownBy(() -> NumberTable.beside(Water.class, "beer.csv"))
        .hasMessageContaining("beer.csv");
    assertThatThrownBy(() -> NumberTable.beside(Water.class, "water.csv").column("taste"))
        .hasMessageContaining("taste")
        .hasMessageContaining("density_kg_per_m3");
  }
}
