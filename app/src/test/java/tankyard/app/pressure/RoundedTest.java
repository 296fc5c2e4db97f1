package tankyard.app.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.app.example.SmallWindow;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.PressureLimit.Kind;
import tankyard.engine.working.Computed;

class RoundedTest {
  private static final Rounded FIELD = Rounded.in(UnitSystem.FIELD);

  private static PressureLimit limit(Kind kind, double psi) {
    PressureLimit any = SmallWindow.open().least().orElseThrow();
    return new PressureLimit(
        kind,
        any.thingId(),
        any.name(),
        any.crest(),
        any.caseId(),
        Computed.of(Pressure.ofPsi(psi), any.gauge()::working),
        any.lift(),
        any.friction(),
        any.valve(),
        any.margin(),
        any.heightBand());
  }

  @Test
  void whatMustBeReachedIsShownNoLower() {
    assertThat(FIELD.limit(limit(Kind.CREST, 17.02))).isEqualTo("17.1");
    assertThat(FIELD.limit(limit(Kind.TANK_INLET, 17.0))).isEqualTo("17.0");
  }

  @Test
  void whatMustNotBePassedIsShownNoHigher() {
    assertThat(FIELD.limit(limit(Kind.STUFFING_BOX, 22.89))).isEqualTo("22.8");
    assertThat(FIELD.limit(limit(Kind.FLOAT_PULL, 125.9))).isEqualTo("125");
  }

  @Test
  void aPartOfAPressureIsRoundedToTheNearest() {
    assertThat(FIELD.near(17.02)).isEqualTo("17.0");
    assertThat(FIELD.near(17.06)).isEqualTo("17.1");
  }
}
