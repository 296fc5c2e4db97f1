package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tankyard.engine.window.PressureLimit;

/** One thing changed at a time: the ends of the window move by what the hand says. */
class DesignVariationsTest {
  /** psi per ft of the case's brine, by the hand rule. */
  private static final double P1_BRINE = 0.4331 * 1.06;

  private static final double P2_BRINE = 0.4331 * 1.07;

  @Test
  void waterTankFiveFeetUpOrDownMovesTheLeastByItsBrine() {
    Design p1 = Design.of("p1-osage-bend");
    for (double step : new double[] {5, -5}) {
      Design moved = p1.with("/tanks/1/inletHeight", Design.amount(15.3 + step, "ft"));
      assertThat(moved.leastPsi() - p1.leastPsi()).isCloseTo(step * P1_BRINE, within(0.1));
      assertThat(moved.mostPsi()).isEqualTo(p1.mostPsi());
    }
  }

  @Test
  void behindAHillTheTankMayRiseOrFallAndTheCrestStillGoverns() {
    Design p2 = Design.of("p2-sandstone-knob");
    for (double step : new double[] {5, -5}) {
      Design moved = p2.with("/tanks/1/inletHeight", Design.amount(15.3 + step, "ft"));
      assertThat(moved.leastPsi()).isEqualTo(p2.leastPsi());
      assertThat(moved.window.tankAlone().orElseThrow().gauge().value().toPsi())
          .isCloseTo(
              p2.window.tankAlone().orElseThrow().gauge().value().toPsi() + step * P2_BRINE,
              within(0.1));
    }
  }

  @Test
  void aTankHigherThanTheHillTakesOverFromTheCrest() {
    Design p2 = Design.of("p2-sandstone-knob");
    assertThat(p2.least().kind()).isEqualTo(PressureLimit.Kind.CREST);
    Design tall = p2.with("/tanks/1/inletHeight", Design.amount(55, "ft"));
    assertThat(tall.least().kind()).isEqualTo(PressureLimit.Kind.TANK_INLET);
    // 880 + 55 is 6.5 ft above the crest's 928.5; the rest is the friction beyond the crest.
    assertThat(tall.least().lift().toPsi() - p2.least().lift().toPsi())
        .isCloseTo(6.5 * P2_BRINE, within(0.1));
  }

  @Test
  void twiceTheWaterCostsFourTimesTheValve() {
    for (String name : new String[] {"p1-osage-bend", "p2-sandstone-knob-2in"}) {
      Design base = Design.of(name);
      Design twice = base.withEach("/cases", "water", 2).withEach("/cases", "oil", 2);
      double valve = base.least().valve().toPsi();
      assertThat(twice.least().valve().toPsi()).isCloseTo(4 * valve, within(0.02 * 4 * valve));
      assertThat(twice.least().lift().toPsi())
          .isCloseTo(base.least().lift().toPsi(), within(0.001));
      // Between Hazen-Williams (2^1.85) and full turbulence (2^2), and never below laminar's 2.
      assertThat(twice.least().friction().toPsi() / base.least().friction().toPsi())
          .isBetween(2.0, 4.0);
    }
  }

  @Test
  void halfTheValveCostsFourTimesItsLossAndNothingElse() {
    Design p1 = Design.of("p1-osage-bend");
    Design small = p1.with("/separators/0/dumpValve/cv", Design.amount(6, "Cv"));
    assertThat(small.leastPsi() - p1.leastPsi()).isCloseTo(3 * 1.17, within(0.02 * 4 * 1.17));
    assertThat(small.least().friction()).isEqualTo(p1.least().friction());
  }

  @Test
  void aWeakBoxTakesOverFromTheReliefValve() {
    Design p1 = Design.of("p1-osage-bend");
    assertThat(p1.most().kind()).isEqualTo(PressureLimit.Kind.RELIEF_VALVE);
    Design weak = p1.withEach("/wells", "boxLimit", Design.amount(40 * 0.4, "psi"));
    assertThat(weak.most().kind()).isEqualTo(PressureLimit.Kind.STUFFING_BOX);
    assertThat(weak.most().thingId()).isEqualTo("W3");
    // 16 less 4.86 of lift and 0.05 of friction.
    assertThat(weak.mostPsi()).isCloseTo(11.09, within(0.2));
    Design one = p1.with("/wells/3/boxLimit", Design.amount(16, "psi"));
    assertThat(one.most().thingId()).isEqualTo("W4");
    assertThat(one.mostPsi()).isCloseTo(16 + 0.98 - 0.05, within(0.2));
  }

  @Test
  void aBoxTooWeakForTheLeastLeavesNoSetting() {
    Design weak =
        Design.of("p1-osage-bend").withEach("/wells", "boxLimit", Design.amount(12, "psi"));
    assertThat(weak.mostPsi()).isLessThan(weak.leastPsi());
    assertThat(weak.window.open()).isFalse();
  }

  @Test
  void aSmallerTankShortensTheNightAndTheRoad() {
    Design p3 = Design.of("p3-coyote-creek");
    Design twice = p3.withEach("/cases", "water", 2);
    double hours = p3.today().storage().waterHours().orElseThrow().value().toHours();
    assertThat(twice.today().storage().waterHours().orElseThrow().value().toHours())
        .isCloseTo(hours / 2, within(0.01));
    assertThat(twice.today().storage().oilUsable().orElseThrow().value())
        .isEqualTo(p3.today().storage().oilUsable().orElseThrow().value());
  }

  @ParameterizedTest
  @CsvSource({"p1-osage-bend, 1, true", "p2-sandstone-knob, 1, false", "p3-coyote-creek, 2, true"})
  void inEveryCaseTheTankMovesTheLeastByItsBrineOrNotAtAll(
      String name, int tank, boolean tankGoverns) {
    Design base = Design.of(name);
    double inlet = base.inletFeet(tank);
    double brine = tankGoverns ? 0.4331 * base.brine() : 0;
    for (double step : new double[] {5, -5}) {
      Design moved =
          base.with("/tanks/" + tank + "/inletHeight", Design.amount(inlet + step, "ft"));
      assertThat(moved.leastPsi() - base.leastPsi()).isCloseTo(step * brine, within(0.1));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek"})
  void inEveryCaseHalfTheValveCostsThreeMoreOfItsLoss(String name) {
    Design base = Design.of(name);
    Design half = base.with("/separators/0/dumpValve/cv", Design.amount(base.cv() / 2, "Cv"));
    double valve = base.least().valve().toPsi();
    assertThat(half.leastPsi() - base.leastPsi()).isCloseTo(3 * valve, within(0.02 * 4 * valve));
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek"})
  void inEveryCaseAWeakerBoxLowersTheMostByWhatItLost(String name) {
    Design strong = Design.of(name).withEach("/wells", "boxLimit", Design.amount(25, "psi"));
    Design weak = Design.of(name).withEach("/wells", "boxLimit", Design.amount(10, "psi"));
    assertThat(strong.most().kind()).isEqualTo(PressureLimit.Kind.STUFFING_BOX);
    assertThat(weak.most().kind()).isEqualTo(PressureLimit.Kind.STUFFING_BOX);
    assertThat(strong.mostPsi() - weak.mostPsi()).isCloseTo(15, within(0.01));
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek"})
  void inEveryCaseTwiceTheFluidFillsTheTanksTwiceAsFast(String name) {
    Design base = Design.of(name);
    Design twice = base.withEach("/cases", "water", 2).withEach("/cases", "oil", 2);
    double hours = base.today().storage().waterHours().orElseThrow().value().toHours();
    assertThat(twice.today().storage().waterHours().orElseThrow().value().toHours())
        .isCloseTo(hours / 2, within(0.02 * hours / 2));
    assertThat(twice.least().valve().toPsi())
        .isCloseTo(
            4 * base.least().valve().toPsi(), within(0.02 * 4 * base.least().valve().toPsi()));
  }
}
