package tankyard.app.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class AxisTest {
  @Test
  void hasRoundEndsAroundTheValues() {
    assertThat(Axis.holding(0, 26.3, 6)).isEqualTo(new Axis(0, 30, 5));
    assertThat(Axis.holding(1013, 1064, 6)).isEqualTo(new Axis(1010, 1070, 10));
  }

  @Test
  void addsNoStepWhereAValueIsRoundAlready() {
    assertThat(Axis.holding(0, 30, 6)).isEqualTo(new Axis(0, 30, 5));
  }

  @Test
  void goesBelowZeroWhereAValueDoes() {
    assertThat(Axis.holding(-2.1, 9, 6)).isEqualTo(new Axis(-4, 10, 2));
  }

  @Test
  void hasRoomEvenWhereAllValuesAreTheSame() {
    Axis axis = Axis.holding(7, 7, 5);
    assertThat(axis.low()).isLessThanOrEqualTo(7);
    assertThat(axis.high()).isGreaterThan(axis.low());
  }

  @Test
  void namesItsTicksWithTheDecimalsOfItsStep() {
    Axis axis = Axis.holding(0, 1, 5);
    assertThat(axis.ticks().stream().map(axis::label))
        .containsExactly("0.0", "0.2", "0.4", "0.6", "0.8", "1.0");
    Axis wide = Axis.holding(0, 3000, 6);
    assertThat(wide.ticks().stream().map(wide::label)).first().isEqualTo("0");
  }

  @Test
  void refusesToRunBackwards() {
    assertThatThrownBy(() -> new Axis(5, 5, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aScaleGoesThereAndBack() {
    Scale up = Scale.of(new Axis(0, 50, 10), 200, 100);
    assertThat(up.place(25)).isEqualTo(150);
    assertThat(up.value(up.place(13))).isEqualTo(13);
  }
}
