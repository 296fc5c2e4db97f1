package tankyard.engine.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

class GunBarrelLegTest {
  private static GunBarrelLeg barrel(double oil, double brine) {
    return new GunBarrelLeg(
        Length.ofFeet(18),
        Gravity.of(oil, Unit.SPECIFIC_GRAVITY),
        Gravity.of(brine, Unit.SPECIFIC_GRAVITY),
        Length.ofFeet(0.1));
  }

  @Test
  void the_interface_for_a_weir_is_the_interface_the_weir_was_cut_for() {
    Length weir = barrel(0.86, 1.08).weirFor(Length.ofFeet(9.5)).value();
    assertThat(barrel(0.86, 1.08).interfaceFor(weir).value().toFeet()).isCloseTo(9.5, within(1e-9));
  }

  @Test
  void a_weir_far_too_low_or_high_is_said_and_the_interface_stays_inside() {
    var low = barrel(0.86, 1.08).interfaceFor(Length.ofFeet(10));
    assertThat(low.value().toFeet()).isZero();
    assertThat(low.cautions()).extracting(Caution::id).containsExactly("interface-outside-vessel");
    var high = barrel(0.86, 1.08).interfaceFor(Length.ofFeet(19));
    assertThat(high.value().toFeet()).isEqualTo(18);
    assertThat(high.working().value()).isCloseTo(18, within(1e-9));
  }

  @Test
  void oil_that_does_not_float_is_refused() {
    assertThatThrownBy(() -> barrel(1.02, 1.01)).hasMessageContaining("does not float");
  }
}
