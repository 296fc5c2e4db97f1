package tankyard.engine.checks.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.window.OilLeg;
import tankyard.engine.window.Setting;

/** Whether a setting works, and whether the one that is typed does. */
class WindowChecksTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final String SETTING = "/separators/0/regulator/setting";
  private static final String GAUGE_RANGE = "/separators/0/gaugeRange";

  private static double leastPsi(Looked looked) {
    return looked.window().least().orElseThrow().gauge().value().toPsi();
  }

  private static Looked most(double psi) {
    return P1.with(GAUGE_RANGE, psi, "psi");
  }

  @Test
  void aMostBelowTheLeastStopsAndNamesBothGovernorsAndTheGap() {
    double least = leastPsi(P1);
    Finding found = P1.withEach("/wells", "boxLimit", "12 psi").the("window-closed");

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.thingId()).isEqualTo("S1");
    assertThat(found.words())
        .contains("7.6 psi (Water tank's inlet)")
        .contains("7.0 psi (Well 3's stuffing box)")
        .contains("build-up of 1.5 psi")
        .contains("1.9 psi short");
    assertThat(found.working().orElseThrow().value()).isCloseTo(7.1 - least - 1.5, within(0.05));
    assertThat(found.wayOut()).anyMatch(w -> w.startsWith("A dump valve of twice the Cv"));
    assertThat(found.wayOut()).anyMatch(w -> w.startsWith("A stuffing box that stands more"));
  }

  @Test
  void anOpenWindowSaysNothing() {
    assertThat(P1.says("window-closed")).isFalse();
    assertThat(most(leastPsi(P1) + 1.5 + 0.11).says("window-closed")).isFalse();
  }

  @Test
  void aWindowJustAsWideAsTheBuildUpIsClosedSinceNoTenthFits() {
    double least = leastPsi(P1);

    assertThat(least * 10 % 1).isBetween(0.001, 0.999);
    assertThat(most(least + 1.5).the("window-closed").words()).contains("only 0 psi is left");
    assertThat(most(least + 1.5 - 0.1).the("window-closed").words()).contains("0.1 psi short");
  }

  @Test
  void anOilTankTooHighForTheMostClosesTheWindowByItsLeg() {
    Finding found = P1.with("/tanks/0/inletHeight", "80 ft").the("window-closed");

    assertThat(found.words()).contains("Oil leg needs").contains("27.0 psi");
  }

  @Test
  void whatTheCuresBuyIsWorkedOutFromTheSameNumbers() {
    Looked closed = P1.withEach("/wells", "boxLimit", "12 psi");
    double valve = closed.window().least().orElseThrow().valve().toPsi();
    String saved = String.format("%.1f psi less", 0.75 * valve);

    assertThat(closed.the("window-closed").wayOut().get(0)).endsWith(saved + ".");
    // Inlet at 15.3 ft, overflow at 14.5 ft: 0.8 ft of 1.06 brine is 0.37 psi.
    assertThat(closed.the("window-closed").wayOut())
        .contains(
            "Filling Water tank from below, with a check valve: least 7.2 psi, 0.4 psi less.");
  }

  @Test
  void aSettingThatReadsBelowTheLeastStops() {
    Finding found = P1.with(SETTING, "6 psi").the("setting-below-least");

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.words()).contains("set to 6 psi").contains("7.6 psi (Water tank's inlet)");
    assertThat(found.wayOut().get(0)).isEqualTo("Set the regulator to 9 psi.");
  }

  @Test
  void aSettingThatReadsJustTheLeastIsEnough() {
    Setting recommended = P1.window().recommended().orElseThrow();
    double head = recommended.gauge().toPsi() - recommended.regulator().value().toPsi();
    double just = leastPsi(P1) - head;

    assertThat(P1.with(SETTING, just, "psi").says("setting-below-least")).isFalse();
    assertThat(P1.with(SETTING, just + 0.001, "psi").says("setting-below-least")).isFalse();
    assertThat(P1.with(SETTING, just - 0.001, "psi").says("setting-below-least")).isTrue();
    assertThat(P1.says("setting-below-least")).isFalse();
  }

  @Test
  void aSettingThatBuildsUpOverTheMostStops() {
    Finding found = P1.with(SETTING, "26 psi").the("setting-above-most");

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.words()).contains("27.5 psi").contains("27.0 psi (Separator's relief valve)");
  }

  @Test
  void aSettingThatBuildsUpJustToTheMostIsLow() {
    assertThat(P1.with(SETTING, "25.5 psi").says("setting-above-most")).isFalse();
    assertThat(P1.with(SETTING, "25.501 psi").says("setting-above-most")).isTrue();
    assertThat(P1.says("setting-above-most")).isFalse();
  }

  @Test
  void aRegulatorBelowWhatTheOilLegNeedsDoesNotRule() {
    Finding found = P1.with(SETTING, "4 psi").the("regulator-does-not-rule");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("Oil leg needs 4.2 psi").contains("4 psi it is set to");
    assertThat(P1.says("regulator-does-not-rule")).isFalse();
  }

  /** P6 is waxy: its oil leg asks for more in winter, and both are told. */
  @Test
  void theOilLegIsToldForSummerAndWinter() {
    Looked wax = Looked.at("p6-black-wax");
    OilLeg leg = wax.window().oilLeg().orElseThrow();
    OilLeg.InCase other = leg.otherSeason().orElseThrow();
    assertThat(wax.caseOf(leg.caseId()).designCase().season())
        .isEqualTo(DesignCase.Season.WINTER)
        .isNotEqualTo(wax.caseOf(other.caseId()).designCase().season());
    assertThat(other.need().value().toPsi()).isLessThan(leg.need().value().toPsi());
    assertThat(other.need().working().value())
        .isCloseTo(other.need().value().toPsi(), within(0.01));
  }

  @Test
  void aRegulatorAtJustWhatTheOilLegNeedsDoesNotRuleEither() {
    double need = P1.window().oilLeg().orElseThrow().need().value().toPsi();

    assertThat(P1.with(SETTING, need, "psi").says("regulator-does-not-rule")).isTrue();
    assertThat(P1.with(SETTING, need + 0.001, "psi").says("regulator-does-not-rule")).isFalse();
  }
}
