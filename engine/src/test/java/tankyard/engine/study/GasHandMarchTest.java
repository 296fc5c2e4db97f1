package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/** The example lease with gas, held against a march by hand. */
class GasHandMarchTest {
  private static final Looked GAP = Looked.at("g1-windy-gap");

  /**
   * The hand march's own check: upward flow in 2.441-in tubing, 0.170 psi/ft. G. Takacs, Gas Lift
   * Manual (2005), chapter 2, as quoted in a test of a public package.
   */
  @Test
  void theHandMarchGivesThePublishedGradient() {
    HandMarch tubing = new HandMarch(2.441, 0.0006, 0, 49.9, 3, 0, 0, 0.75, 35, 60);

    assertThat(tubing.gradient(0.79, 1.93, 1.79, 0.02, 346.6, 1, 8, false))
        .isCloseTo(0.170, within(0.0005));
  }

  @Test
  void everyLineOfTheLeaseIsWhatTheHandMarchGives() {
    assertLine("FL-W1", 1.5 * 54, 1.5 * 9, 6);
    assertLine("FL-W2", 1.5 * 36, 1.5 * 6, 3.75);
    assertLine("FL-T1", 90, 15, 6.5);
  }

  private static void assertLine(String id, double liquid, double oil, double gas) {
    CaseStudy study =
        new CaseStudy(GAP.evidence().survey(), GAP.evidence().survey().lease().cases().get(0));
    LineRun run =
        study.gatheringAt(java.util.Map.of("S1", 0.0)).runs().stream()
            .filter(r -> r.laid().id().equals(id))
            .findFirst()
            .orElseThrow();
    LineResult line = GAP.caseOf("today").line(id).orElseThrow();
    HandMarch hand =
        new HandMarch(
            run.laid().pipe().bore().in(Unit.INCH),
            run.laid().pipe().roughness().in(Unit.INCH),
            liquid,
            Unit.POUND_PER_CUBIC_FOOT.fromSi(run.liquid().liquid().densityKgPerM3()),
            Unit.CENTIPOISE.fromSi(run.liquid().liquid().viscosityPaS()),
            oil,
            gas,
            0.75,
            GAP.evidence().survey().lease().fluids().oil().toApi(),
            70);
    List<HandMarch.Station> stations =
        line.points().stream()
            .map(p -> new HandMarch.Station(p.distance().toFeet(), p.pipe().toFeet()))
            .toList();
    double byHand = hand.upstream(stations, line.end().toPsi() + HandMarch.AIR_PSIA);

    assertThat(line.gas()).isPresent();
    assertThat(line.start().toPsi() - line.end().toPsi())
        .as("%s: psi over the line", id)
        .isCloseTo(byHand - HandMarch.AIR_PSIA - line.end().toPsi(), withinPercentage(0.5));
  }

  /** Our own numbers, so that a change calls a person. */
  @Test
  void pinnedGaugeAndBoxes() {
    CaseResult today = GAP.caseOf("today");

    assertThat(today.well("W1").orElseThrow().box().value().toPsi())
        .isCloseTo(18.6015, within(0.0005));
    assertThat(today.separator("S1").orElseThrow().gas().orElseThrow().part().value().ratio())
        .isCloseTo(0.8793, within(0.00005));
    assertThat(GAP.window().notValid()).isPresent();
    assertThat(
            GAP.window().allowed().stream()
                .filter(l -> l.kind() == PressureLimit.Kind.STUFFING_BOX)
                .findFirst()
                .orElseThrow()
                .gauge()
                .value()
                .toPsi())
        .isCloseTo(70.9831, within(0.0005));
  }
}
