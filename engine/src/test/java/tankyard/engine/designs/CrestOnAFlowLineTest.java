package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.window.PressureLimit;

/** A hill between a well and the separator: the box feels the hill, not the gauge. */
class CrestOnAFlowLineTest {
  private static Map<String, Object> peg(double east, double north, double ground) {
    return Map.of(
        "at",
        Map.of("east", Design.amount(east, "ft"), "north", Design.amount(north, "ft")),
        "ground",
        Design.amount(ground, "ft"));
  }

  /** Well 4 at 851 ft, separator inlet at 848 ft, and a hill of 920 ft between the two. */
  private static Design hill() {
    return Design.of("p1-osage-bend").with("/lines/3/route", List.of(peg(875, 535, 920)));
  }

  @Test
  void theBoxStandsAtTheHillsHeightWhateverTheGaugeReads() {
    Design hill = hill();
    // 920 ft less 3 ft of cover, above the box at 851 ft, of a mixture of 1.0385.
    double byHand = 0.4331 * 1.0385 * (917 - 851);
    double at5 = hill.at(5).well("W4").orElseThrow().box().value().toPsi();
    double at9 = hill.at(9).well("W4").orElseThrow().box().value().toPsi();
    assertThat(at5).isCloseTo(byHand, within(0.2));
    assertThat(at9).isEqualTo(at5);
    assertThat(hill.at(9).well("W4").orElseThrow().box().working().value())
        .isCloseTo(at9, within(0.01));
  }

  @Test
  void aHeightShotOnTheMapBetweenTwoPegsIsAsGoodAsAPeg() {
    Design spot = Design.of("p1-osage-bend").with("/spotHeights", List.of(peg(875, 535, 920)));
    double box = spot.at(5).well("W4").orElseThrow().box().value().toPsi();
    assertThat(box)
        .isCloseTo(hill().at(5).well("W4").orElseThrow().box().value().toPsi(), within(0.01));
    assertThat(spot.at(5).line("FL-W4").orElseThrow().crest()).isPresent();
  }

  @Test
  void aHillAboveTheBoxLimitLeavesNoSetting() {
    Design weak = hill().with("/wells/3/boxLimit", Design.amount(25, "psi"));
    assertThat(weak.most().kind()).isEqualTo(PressureLimit.Kind.STUFFING_BOX);
    assertThat(weak.most().thingId()).isEqualTo("W4");
    assertThat(weak.window.open()).isFalse();
  }

  @Test
  void aHillBelowTheBoxLimitLeavesTheReliefValveInCharge() {
    assertThat(hill().most().kind()).isEqualTo(PressureLimit.Kind.RELIEF_VALVE);
  }
}
