package tankyard.engine.checks.growth;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;

/** Prairie Flood with the limit of one thing moved to either side of a month. */
class RunsOutCheckTest {
  private static final Looked BASE = Looked.at("p5-prairie-flood");

  /** What a pump puts away in 90 % of the day is the water of that month. */
  private static Looked pumpLasting(double months) {
    double rate = 420 * Math.pow(2, months / 24) / 0.9;
    return BASE.with("/injectionPumps/0/rate", rate, "bbl/d");
  }

  @Test
  void aPumpThatLastsTwoYearsJustIsTold() {
    assertThat(pumpLasting(23.9999).says("pump-runs-out")).isTrue();
    assertThat(pumpLasting(24.01).says("pump-runs-out")).isFalse();
  }

  @Test
  void whatHasRunOutAlreadyIsLeftToTodaysChecks() {
    Looked short0 = BASE.with("/injectionPumps/0/rate", 400, "bbl/d");
    assertThat(short0.says("pump-runs-out")).isFalse();
    assertThat(short0.the("injection-hours-long").words()).contains("can't keep up");
  }

  @Test
  void aPermittedRateCountsAsTheWellsLimit() {
    Looked early = BASE.with("/injectionWells/0/permitRate", 500, "bbl/d");
    assertThat(early.the("injection-well-runs-out").words()).contains("permits").contains("6");
    assertThat(
            BASE.with("/injectionWells/0/permitRate", 5000, "bbl/d")
                .says("injection-well-runs-out"))
        .isTrue();
  }

  @Test
  void aWellWithoutAnyLimitIsNotLookedAt() {
    assertThat(BASE.with("/injectionWells/0/depth", null).says("injection-well-runs-out"))
        .isFalse();
  }

  @Test
  void waterTanksThatOutlastTheNightTodayAreToldWhenTheyNoLongerWill() {
    assertThat(BASE.says("water-tanks-run-out")).isFalse();
    Looked shortNight = BASE.with("/practice/nightOut", 5, "h");
    assertThat(shortNight.the("water-tanks-run-out").words()).contains("month 11.2");
    assertThat(BASE.with("/practice/nightOut", 3.4, "h").says("water-tanks-run-out")).isFalse();
  }

  @Test
  void theOverflowIsToldInTheCaseThatComesFirst() {
    assertThat(BASE.the("overflow-runs-out").caseId()).contains("all-on");
    assertThat(BASE.with("/cases/2", null).says("overflow-runs-out")).isFalse();
  }

  @Test
  void theWindowIsToldWhenTheLeastComesUpToTheSettingWithinTwoYears() {
    double least = BASE.window().least().orElseThrow().gauge().value().toPsi();
    assertThat(BASE.window().least().orElseThrow().caseId()).isEqualTo("in-24-months");
    assertThat(set(least - 0.01).the("window-runs-out").words())
        .contains("no more than the least in month 24");
    assertThat(set(least + 0.01).says("window-runs-out")).isFalse();
  }

  private static Looked set(double psi) {
    return BASE.with("/separators/0/regulator/setting", psi, "psi");
  }

  @Test
  void waterThatDoesNotGrowRunsNothingOut() {
    Looked still = BASE.with("/practice/waterDoubles", null);
    assertThat(still.evidence().outlook()).isEmpty();
    assertThat(still.says("pump-runs-out")).isFalse();
    assertThat(still.says("injection-well-runs-out")).isFalse();
  }
}
