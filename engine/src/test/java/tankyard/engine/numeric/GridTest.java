package tankyard.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GridTest {
  private static final Grid GRID =
      Grid.of(
          new double[] {0, 0, 2, 2, 4, 4},
          new double[] {10, 20, 10, 20, 10, 20},
          new double[] {1, 3, 5, 7, 9, 11});

  @Test
  void it_reads_straight_between_its_points() {
    assertThat(GRID.at(2, 20)).isEqualTo(7);
    assertThat(GRID.at(1, 15)).isCloseTo(4, within(1e-12));
    assertThat(GRID.at(4, 20)).isEqualTo(11);
  }

  @Test
  void beyond_its_edge_the_edge_holds() {
    assertThat(GRID.at(-5, 99)).isEqualTo(3);
    assertThat(GRID.covers(-5, 15)).isFalse();
    assertThat(GRID.covers(4, 10)).isTrue();
  }

  @Test
  void a_table_with_holes_is_refused() {
    assertThatThrownBy(
            () -> Grid.of(new double[] {0, 0, 1}, new double[] {1, 2, 1}, new double[] {1, 2, 3}))
        .hasMessageContaining("no full grid");
  }
}
