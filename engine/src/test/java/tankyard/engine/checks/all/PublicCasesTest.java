package tankyard.engine.checks.all;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/** The decisions of the public cases are findings, and change when the case does. */
class PublicCasesTest {

  @Test
  void osageBendNeedsASecondOilTank() {
    Finding found = Looked.at("p1-osage-bend").the("oil-storage-short");

    assertThat(found.words())
        .contains("One oil tank is not enough")
        .contains("181.9 bbl")
        .contains("1.8 d");
    assertThat(found.wayOut().get(0)).contains("one settles").contains("the other fills");
    assertThat(Looked.at("p1-osage-bend-priced").says("oil-storage-short")).isFalse();
  }

  @Test
  void osageBendWithRoomEnoughInOneTankHasNoSuchFinding() {
    assertThat(
            Looked.at("p1-osage-bend").with("/practice/roadOut", "1.8 d").says("oil-storage-short"))
        .isFalse();
    assertThat(
            Looked.at("p1-osage-bend").with("/practice/roadOut", "1.9 d").says("oil-storage-short"))
        .isTrue();
  }

  @Test
  void sandstoneKnobsCrestGovernsOnEveryWay() {
    // By hand, Hazen-Williams: 3.3 and 16.6; friction within 20 %.
    Looked straight = Looked.at("p2-sandstone-knob-2in");
    assertThat(psi(straight.the("crest-governs"), "needs ")).isCloseTo(16.6, within(0.65));
    assertThat(psi(straight.the("crest-governs"), "would need ")).isCloseTo(3.3, within(1.1));
    assertThat(psi(Looked.at("p2-sandstone-knob").the("crest-governs"), "needs "))
        .isCloseTo(14.5, within(0.3));
    assertThat(psi(Looked.at("p2-sandstone-knob-deeper").the("crest-governs"), "needs "))
        .isCloseTo(11.7, within(0.3));
    assertThat(psi(Looked.at("p2-sandstone-knob-round-2in").the("crest-governs"), "needs "))
        .isCloseTo(9.1, within(0.8));
    assertThat(psi(Looked.at("p2-sandstone-knob-round-3in").the("crest-governs"), "needs "))
        .isCloseTo(5.9, within(0.3));
  }

  private static double psi(Finding finding, String before) {
    String words = finding.words();
    String after = words.substring(words.indexOf(before) + before.length());
    return Double.parseDouble(after.substring(0, after.indexOf(" psi")));
  }

  @Test
  void coyoteCreekIsShortWithTheOld210ForOilAndNotWithTwo300s() {
    Finding found = Looked.at("p3-coyote-creek-210-oil").the("oil-storage-short");

    assertThat(found.words()).contains("443.7 bbl").contains("460 bbl").contains("9.4 d");
    assertThat(Looked.at("p3-coyote-creek-400").says("oil-storage-short")).isFalse();
    assertThat(Looked.at("p3-coyote-creek").says("oil-storage-short")).isFalse();
  }

  @Test
  void coyoteCreeksOverflowIsTooSmallOnTheAverageAndWithAllWellsOn() {
    Looked both = Looked.at("p3-coyote-creek");
    Looked average = both.with("/cases/1", null);

    assertThat(both.all("overflow-too-small").get(0).words())
        .contains("262 bbl/d")
        .contains("567 bbl/d")
        .contains("spills 305 bbl/d");
    assertThat(both.all("overflow-too-small").get(0).caseId()).contains("all-on");
    assertThat(average.all("overflow-too-small").get(0).words())
        .contains("262 bbl/d")
        .contains("378 bbl/d")
        .contains("spills 116 bbl/d");
  }

  @Test
  void coyoteCreeksThreeInchOverflowPassesAll() {
    Looked bigger =
        Looked.at("p3-coyote-creek")
            .with("/lines/13/pipe", "steel-3")
            .with("/lines/14/pipe", "steel-3");

    assertThat(bigger.says("overflow-too-small")).isFalse();
  }

  @Test
  void coyoteCreeksNightIsLongerThanOneWaterTank() {
    assertThat(Looked.at("p3-coyote-creek-210-oil").the("water-hours-short").words())
        .contains("11.7 h")
        .contains("14 h");
    assertThat(Looked.at("p3-coyote-creek-400").says("water-hours-short")).isFalse();
    assertThat(Looked.at("p3-coyote-creek-two-210s").says("water-hours-short")).isFalse();
    assertThat(
            Looked.at("p3-coyote-creek-210-oil")
                .with("/tanks/2/diameter", "10 ft")
                .with("/tanks/2/pumpOn", "8 ft")
                .the("water-hours-short")
                .words())
        .contains("6.2 h");
  }

  @Test
  void prairieFloodsBigPumpIsOverTheLimitOnDayOneAndTheOthersAreNot() {
    Finding found = Looked.at("p5-prairie-flood-1000").the("injection-over-permit");

    assertThat(found.caseId()).contains("today");
    assertThat(found.words()).contains("1000 bbl/d").contains("370 psi").contains("315 psi");
    assertThat(found.wayOut().get(0)).contains("780 bbl/d");
    assertThat(found.wayOut().get(1)).contains("second injection well");
    for (double rate : new double[] {600, 780}) {
      Looked slower = Looked.at("p5-prairie-flood").with("/injectionPumps/0/rate", rate, "bbl/d");
      assertThat(slower.says("injection-over-permit")).isFalse();
    }
    Looked permitted =
        Looked.at("p5-prairie-flood-1000").with("/injectionWells/0/permitPressure", 315, "psi");
    assertThat(permitted.the("injection-over-permit").severity()).isEqualTo(Severity.STOP);
    assertThat(permitted.says("permit-unknown")).isFalse();
  }

  @Test
  void prairieFloodsPumpRunsOutThenItsWellAndASecondTankIsDueBefore() {
    Looked base = Looked.at("p5-prairie-flood");

    Finding pump = base.the("pump-runs-out");
    assertThat(pump.words()).contains("month 8.7").contains("all day in month 12.3");
    assertThat(pump.wayOut().get(0)).contains("full in month 21.5");
    assertThat(pump.wayOut().get(1)).contains("second water tank").contains("high switch");
    Finding well = base.the("injection-well-runs-out");
    assertThat(well.words()).contains("month 21.5");
    assertThat(well.wayOut().get(0)).contains("second injection well now");
    assertThat(base.the("water-hours-short").words()).contains("3.5 h");
    assertThat(base.the("injection-hours-long").words()).contains("33.6 h");
  }

  @Test
  void prairieFloodOnTwoWellsKeepsUpForTwoYearsWithinTheLimit() {
    Looked two = Looked.at("p5-prairie-flood-two-wells");

    assertThat(two.says("injection-over-permit")).isFalse();
    assertThat(two.says("injection-well-runs-out")).isFalse();
    Looked faster = two.with("/injectionPumps/0/rate", 1000, "bbl/d");
    assertThat(faster.says("injection-over-permit")).isFalse();
    assertThat(faster.says("pump-runs-out")).isFalse();
  }

  @Test
  void oldWindmillsDowncomerIsJustShortInFourInchAndSixIsEnough() {
    Looked p4 = Looked.at("p4-old-windmill");
    Finding found = p4.the("gun-barrel-downcomer-small");

    assertThat(found.words()).contains("1386 bbl/d").contains("1500 bbl/d");
    assertThat(found.wayOut()).anyMatch(w -> w.contains("6-in")).anyMatch(w -> w.contains("Hold"));
    assertThat(downcomer(p4, "steel-3").the("gun-barrel-downcomer-small").words())
        .contains("702 bbl/d");
    assertThat(downcomer(p4, "steel-6").says("gun-barrel-downcomer-small")).isFalse();
    // The surge held to 1,350 by longer hours: 622 bbl/d in 11.06 h.
    assertThat(
            p4.withEach("/wells", "runsPerDay", Looked.amount(11.06, "h"))
                .says("gun-barrel-downcomer-small"))
        .isFalse();
  }

  private static Looked downcomer(Looked lease, String pipe) {
    return lease.with("/gunBarrels/0/downcomerPipe", pipe);
  }

  @Test
  void oldWindmillsWaterRunsInThreeAndFourInchAndNotInTwo() {
    Looked p4 = Looked.at("p4-old-windmill");

    assertThat(p4.with("/lines/6/pipe", "steel-2").says("gun-barrel-tank-high")).isTrue();
    assertThat(p4.with("/lines/6/pipe", "steel-3").says("gun-barrel-tank-high")).isFalse();
    assertThat(p4.says("gun-barrel-tank-high")).isFalse();
  }

  @Test
  void oldWindmillCannotWorkWithItsWaterTankTwoFeetHigher() {
    Looked p4 = Looked.at("p4-old-windmill");

    assertThat(p4.with("/tanks/2/ground", 902, "ft").the("gun-barrel-tank-high").words())
        .contains("can't run at all");
    assertThat(p4.with("/tanks/2/ground", 900.9, "ft").says("gun-barrel-tank-high")).isFalse();
    assertThat(
            p4.with("/tanks/2/ground", 902, "ft")
                .with("/gunBarrels/0/ground", 901.2, "ft")
                .says("gun-barrel-tank-high"))
        .isFalse();
  }

  @Test
  void oldWindmillsWeirWantsAnAdjustableNippleOfSixInches() {
    assertThat(Looked.at("p4-old-windmill").the("gun-barrel-touchy").wayOut())
        .containsExactly("An adjustable nipple that reaches 6 in up and down.");
  }

  @Test
  void oldWindmillAtTwiceTheRateOutgrowsLegAndDowncomer() {
    Looked twice =
        Looked.at("p4-old-windmill")
            .with("/gunBarrels/0/legPipe", "steel-3")
            .with("/gunBarrels/0/downcomerPipe", "steel-6")
            .withEach("/cases", "water", 2)
            .withEach("/cases", "oil", 2);

    assertThat(twice.the("gun-barrel-leg-small").wayOut().get(0)).contains("4-in");
    assertThat(twice.says("gun-barrel-downcomer-small")).isFalse();
    assertThat(twice.caseOf("all-on").gunBarrels().get(0).surge().value().toBarrelsPerDay())
        .isCloseTo(3000, within(1.0));
  }

  @Test
  void oldWindmillWithOtherLiquidsHasAnotherWeir() {
    Looked p4 = Looked.at("p4-old-windmill");

    // By hand: 10 + 8 x SGo/SGw, with 28 API 0.8871 and brine 1.05.
    assertThat(weir(p4.with("/fluids/oil", 28, "°API"))).isCloseTo(16.571, within(0.001));
    assertThat(weir(p4.with("/fluids/brine", 1.05, "SG"))).isCloseTo(16.594, within(0.001));
  }

  private static double weir(Looked lease) {
    return lease.caseOf("today").gunBarrels().get(0).cut().weir().value().toFeet();
  }
}
