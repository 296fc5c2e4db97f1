package tankyard.engine.valves;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Cv;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;

class RegulatorLawTest {
  private static final Liquid OIL = new Liquid(845, 8e-3);
  private static final LiquidRate NONE = LiquidRate.ofBarrelsPerDay(0);
  private static final LiquidRate FULL = LiquidRate.ofBarrelsPerDay(24);
  private static final LiquidRate HALF = LiquidRate.ofBarrelsPerDay(12);

  private static RegulatorLaw law(Optional<Cv> wideOpen) {
    return new RegulatorLaw(
        new RegulatorSpec(Pressure.ofPsi(14.5), Pressure.ofPsi(1.5), Optional.of(FULL), wideOpen));
  }

  @Test
  void it_holds_its_setting_at_lock_up_and_climbs_straight_with_the_flow() {
    RegulatorLaw law = law(Optional.empty());
    assertThat(law.ahead(NONE, OIL, Pressure.ofPsi(3)).toPsi()).isCloseTo(14.5, within(1e-9));
    assertThat(law.ahead(HALF, OIL, Pressure.ofPsi(3)).toPsi()).isCloseTo(15.25, within(1e-9));
    assertThat(law.ahead(FULL, OIL, Pressure.ofPsi(3)).toPsi()).isCloseTo(16, within(1e-9));
    assertThat(law.rules(FULL, OIL, Pressure.ofPsi(3))).isTrue();
  }

  @Test
  void where_the_oil_leg_needs_more_the_screw_does_nothing() {
    RegulatorLaw law = law(Optional.empty());
    assertThat(law.ahead(NONE, OIL, Pressure.ofPsi(20)).toPsi()).isCloseTo(20, within(1e-9));
    assertThat(law.rules(NONE, OIL, Pressure.ofPsi(20))).isFalse();
  }

  @Test
  void wide_open_it_is_a_fixed_restriction() {
    RegulatorLaw law = law(Optional.of(Cv.ofGpmPerRootPsi(2)));
    LiquidRate all = LiquidRate.ofGpm(10);
    double lost = 845 / 999.016 * 25;
    assertThat(law.ahead(all, OIL, Pressure.ofPsi(60)).toPsi()).isCloseTo(60 + lost, within(1e-3));
  }
}
