package tankyard.engine.checks.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.CaseEdits;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.Restart;
import tankyard.engine.units.Pressure;

/** What cold does to waxy oil, hit, missed and on the limit. */
class ColdChecksTest {
  private static final Looked TWO_INCH = Looked.at("p6-black-wax");
  private static final Looked FOUR_INCH = Looked.at("p6-black-wax-4in");

  private static LineResult trunk(Looked lease, String designCase) {
    return lease.caseOf(designCase).line("TR").orElseThrow();
  }

  @Test
  void aGelledLineThatPassesItsRatingIsToBeMended() {
    Finding found =
        TWO_INCH.all("restart-over-rating").stream()
            .filter(f -> f.thingId().equals("TR"))
            .findFirst()
            .orElseThrow();

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.caseId()).contains("january");
    assertThat(found.words()).contains("79.1 psi of it for the gel").contains("stands 80 psi");
    assertThat(found.wayOut().get(0)).contains("produced water");
    assertThat(found.working().orElseThrow().value())
        .isCloseTo(
            trunk(TWO_INCH, "january").restart().orElseThrow().highest().value().toPsi(),
            within(0.05));
  }

  @Test
  void aRestartOnTheRatingHoldsAndAHairAboveDoesNot() {
    assertThat(restartingAt(80, 0).says("restart-over-rating")).isFalse();
    assertThat(restartingAt(80.001, 0).says("restart-over-rating")).isTrue();
    assertThat(restartingAt(50, 30).says("restart-in-doubt")).isFalse();
    assertThat(restartingAt(50, 30.001).says("restart-in-doubt")).isTrue();
  }

  /** Every gelled line as if it asked for that. */
  private static Looked restartingAt(double psi, double gelPsi) {
    Restart restart =
        new Restart(
            CaseEdits.computed(Pressure.ofPsi(gelPsi)),
            Pressure.ofPsi(gelPsi),
            CaseEdits.computed(Pressure.ofPsi(psi)));
    return FOUR_INCH.seeing(
        c -> CaseEdits.lines(c, l -> l.withRestart(l.restart().map(was -> restart))));
  }

  @Test
  void aLineThatHoldsOnlyByTheBetterGelStrengthIsInDoubt() {
    assertThat(FOUR_INCH.says("restart-over-rating")).isFalse();
    assertThat(FOUR_INCH.all("restart-in-doubt"))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.words()).contains("can't be trusted to start"));
  }

  @Test
  void aStuffingBoxIsHeldAgainstTheSameRestart() {
    double asked =
        FOUR_INCH
            .caseOf("january")
            .well("W1")
            .orElseThrow()
            .restart()
            .orElseThrow()
            .highest()
            .value()
            .toPsi();

    assertThat(FOUR_INCH.with("/wells/0/boxLimit", asked - 0.01, "psi").the("restart-over-box"))
        .satisfies(f -> assertThat(f.thingId()).isEqualTo("W1"));
    assertThat(FOUR_INCH.with("/wells/0/boxLimit", asked, "psi").says("restart-over-box"))
        .isFalse();
  }

  @Test
  void nothingGelsWhereTheGroundIsNotBelowThePourPointOrWaterCarriesTheOil() {
    assertThat(TWO_INCH.with("/site/groundWinter", "45 °F").says("restart-over-rating")).isFalse();
    assertThat(TWO_INCH.with("/site/groundWinter", "44.9 °F").says("restart-over-rating")).isTrue();
    assertThat(TWO_INCH.with("/fluids/inversion", "39 %").says("restart-over-rating")).isFalse();
    assertThat(TWO_INCH.with("/fluids/pourPoint", null).says("restart-over-rating")).isFalse();
  }

  @Test
  void aLineColderThanTheOilPoursIsSaid() {
    assertThat(TWO_INCH.all("line-below-pour-point"))
        .extracting(Finding::thingId)
        .contains("TR", "FL-W1", "OL1")
        .doesNotContain("FL-W2", "WL1");
    double end = trunk(TWO_INCH, "january").temperatures().end().toFahrenheit();
    assertThat(TWO_INCH.with("/fluids/pourPoint", end + 0.001, "°F").all("line-below-pour-point"))
        .extracting(Finding::thingId)
        .contains("TR");
    assertThat(TWO_INCH.with("/fluids/pourPoint", end, "°F").all("line-below-pour-point"))
        .extracting(Finding::thingId)
        .doesNotContain("TR");
  }

  @Test
  void anUnknownGelStrengthIsSaidWhereItWouldMatter() {
    Looked unknown = TWO_INCH.with("/fluids/gelStrength", null);

    assertThat(unknown.the("gel-strength-unknown").words()).contains("40 °F").contains("45 °F");
    assertThat(TWO_INCH.says("gel-strength-unknown")).isFalse();
    assertThat(unknown.with("/site/groundWinter", "45 °F").says("gel-strength-unknown")).isFalse();
    assertThat(unknown.with("/fluids/pourPoint", null).says("gel-strength-unknown")).isFalse();
  }

  @Test
  void aColdLaminarLossIsDoubtedOnlyWhereTwiceOfItWouldBreakThePipe() {
    Looked calm = FOUR_INCH.with("/cases/3/sharedSurge", 1);
    LineResult cold = trunk(calm, "january");
    assertThat(cold.isColdLaminar()).isTrue();
    assertThat(trunk(calm, "july").isColdLaminar()).isFalse();
    // The regulator builds up by 1.5 psi.
    double twice = cold.highest().toPsi() + 1.5 + cold.friction().value().toPsi();

    assertThat(doubts(calm, twice)).isFalse();
    assertThat(doubts(calm, twice - 0.001)).isTrue();
    assertThat(doubts(calm, cold.highest().toPsi() + 1.4)).as("over its rating as it is").isFalse();
  }

  /** Own pipe number 2 is the 4-in of the trunk. */
  private static boolean doubts(Looked lease, double ratingPsi) {
    return lease.with("/ownPipes/2/ratingOil", ratingPsi, "psi").all("cold-laminar").stream()
        .anyMatch(f -> f.thingId().equals("TR"));
  }
}
