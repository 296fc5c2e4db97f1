package tankyard.engine.tanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.units.Area;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Caution;

class OverflowTest {
  private static final Overflow THREE_INCH = new Overflow(Length.of(3.068, Unit.INCH));

  @Test
  void on_a_steep_slope_swallowing_binds_and_on_a_flat_one_the_slope() {
    var steep =
        THREE_INCH.capacity(Fraction.ofPercent(2), Overflow.USUAL_FILLING, Overflow.STEEL_N);
    assertThat(steep.value()).isEqualTo(THREE_INCH.selfVenting().value());
    assertThat(steep.cautions()).isEmpty();
    var flat =
        THREE_INCH.capacity(Fraction.ofPercent(0.05), Overflow.USUAL_FILLING, Overflow.STEEL_N);
    assertThat(flat.value().toBarrelsPerDay())
        .isLessThan(THREE_INCH.selfVenting().value().toBarrelsPerDay());
    assertThat(flat.cautions()).extracting(Caution::id).containsExactly("overflow-slope-binds");
  }

  @Test
  void the_depth_for_what_it_carries_is_the_filling() {
    Fraction slope = Fraction.ofPercent(1);
    LiquidRate half = THREE_INCH.onSlope(slope, Fraction.ofPercent(50), 0.013).value();
    assertThat(THREE_INCH.depthFor(half, slope, 0.013).toInches())
        .isCloseTo(3.068 / 2, within(1e-9));
  }

  @Test
  void on_its_least_slope_it_carries_just_what_was_asked() {
    LiquidRate asked = LiquidRate.ofBarrelsPerDay(400);
    Fraction least = THREE_INCH.leastSlope(asked, Overflow.USUAL_FILLING, 0.013).value();

    assertThat(THREE_INCH.onSlope(least, Overflow.USUAL_FILLING, 0.013).value().toBarrelsPerDay())
        .isCloseTo(400, within(1e-9));
  }

  @Test
  void what_does_not_fit_is_said() {
    assertThatThrownBy(
            () ->
                THREE_INCH.depthFor(
                    LiquidRate.ofBarrelsPerDay(9000), Fraction.ofPercent(0.1), 0.013))
        .hasMessageContaining("9000 bbl/d do not fit");
  }

  @Test
  void tanks_that_fill_the_berm_are_refused() {
    assertThatThrownBy(
            () ->
                new BermSpec(
                    Area.ofSquareFeet(200),
                    Volume.ofBarrels(210),
                    Fraction.ofPercent(100),
                    Area.ofSquareFeet(201),
                    Length.ofFeet(0),
                    Length.ofFeet(0)))
        .hasMessageContaining("leave no room");
  }
}
