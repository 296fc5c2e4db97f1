package tankyard.engine.checks.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.CaseEdits;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.PipePoint;

/** Pressure, speed and part-full stretches of the lines. */
class LineChecksTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked SET = P1.with("/separators/0/regulator/setting", "9 psi");

  /** Highest pressure on any line in poly-2 with oil inside and the regulator built up by 1.5. */
  private static double highestPsi() {
    return SET.evidence().cases().stream()
        .flatMap(c -> c.lines().stream())
        .filter(l -> l.lineId().startsWith("FL-"))
        .mapToDouble(l -> l.highest().toPsi() + 1.5)
        .max()
        .orElseThrow();
  }

  private static Looked rated(double psi) {
    return SET.with("/ownPipes/2/ratingOil", psi, "psi");
  }

  private static Looked running(double feetPerSecond) {
    return P1.seeing(c -> CaseEdits.lines(c, l -> CaseEdits.atSpeed(l, feetPerSecond)));
  }

  @Test
  void aPipeUnderMoreThanItsRatingStops() {
    Finding found = rated(highestPsi() - 0.5).all("pipe-over-rating").get(0);

    assertThat(found.severity()).isEqualTo(Severity.STOP);
    assertThat(found.thingId()).isEqualTo("FL-W3");
    assertThat(found.words())
        .contains(String.format("sees %.1f psi", highestPsi()))
        .contains("with oil inside");
    assertThat(SET.says("pipe-over-rating")).isFalse();
  }

  @Test
  void aPipeUnderJustItsRatingHolds() {
    assertThat(rated(highestPsi()).says("pipe-over-rating")).isFalse();
    assertThat(rated(highestPsi() - 1e-6).says("pipe-over-rating")).isTrue();
  }

  @Test
  void aWaterLegIsHeldAgainstWhatThePipeStandsWithWaterInside() {
    Looked weak = SET.with("/ownPipes/2/ratingWater", "2 psi");

    assertThat(weak.the("pipe-over-rating").thingId()).isEqualTo("WL1");
    assertThat(weak.the("pipe-over-rating").words()).contains("with water inside");
  }

  @Test
  void linesNobodyKnowsTheRatingOfAreListedOnce() {
    Looked unrated = P1.with("/ownPipes/2/ratingWater", null);

    assertThat(P1.says("pipe-not-rated")).isFalse();
    assertThat(unrated.the("pipe-not-rated").words()).contains("Water leg");
    assertThat(unrated.the("pipe-not-rated").severity()).isEqualTo(Severity.NOTE);
    assertThat(P1.with("/ownPipes/2/ratingOil", null).the("pipe-not-rated").words())
        .contains("W1 to separator, W2 to separator, W3 to separator, W4 to separator and Oil leg");
  }

  @Test
  void aLineFasterThanFifteenFeetASecondIsLookedAt() {
    assertThat(P1.says("line-fast")).isFalse();
    assertThat(running(15).says("line-fast")).isFalse();
    assertThat(running(15.01).all("line-fast")).hasSize(6);
    assertThat(running(15.01).all("line-fast").get(0).words()).contains("15.01 ft/s");
    assertThat(running(15.01).all("line-fast").get(0).severity()).isEqualTo(Severity.LOOK);
  }

  @Test
  void slowLinesAreToldOnceForTheWholeLease() {
    assertThat(P1.the("line-slow").words()).startsWith("6 of 6 lines");
    assertThat(P1.the("line-slow").severity()).isEqualTo(Severity.NOTE);
    assertThat(running(3).says("line-slow")).isFalse();
    assertThat(running(2.99).says("line-slow")).isTrue();
  }

  @Test
  void aLineThatIsFastInOneCaseIsNotSlow() {
    Looked flushed =
        P1.seeing(
            c ->
                CaseEdits.lines(
                    c,
                    l ->
                        c.designCase().id().equals("all-on") && l.lineId().equals("WL1")
                            ? CaseEdits.atSpeed(l, 4)
                            : l));

    assertThat(flushed.the("line-slow").words()).startsWith("5 of 6 lines");
  }

  @Test
  void aStretchThatRunsPartFullIsSaidWithItsEnds() {
    Finding found = Looked.at("p2-sandstone-knob").the("part-full-stretch");

    assertThat(found.thingId()).isEqualTo("WL1");
    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words()).contains("from 1,026 to 1,548 ft of pipe");
    assertThat(P1.says("part-full-stretch")).isFalse();
  }

  @Test
  void aPartFullStretchEndsWhereTheHydraulicGradeMeetsThePipe() {
    Looked knob = Looked.at("p2-sandstone-knob");
    LineResult leg = knob.caseOf("today").line("WL1").orElseThrow();
    double end = leg.partFull().get(0).to().toFeet();
    List<PipePoint> behind =
        leg.points().stream().filter(p -> p.distance().toFeet() > end).toList();
    PipePoint full = behind.get(0);
    PipePoint dry = leg.points().get(leg.points().size() - behind.size() - 1);
    double share = (end - feet(dry)) / (feet(full) - feet(dry));
    double pipe = dry.pipe().toFeet() + share * (full.pipe().toFeet() - dry.pipe().toFeet());
    double brine = knob.evidence().lease().fluids().brine().specific();
    double lossPerFoot = leg.friction().value().toPsi() / leg.partFull().get(0).from().toFeet();

    assertThat(leg.partFull()).hasSize(1);
    assertThat(dry.partFull()).isTrue();
    assertThat(full.partFull()).isFalse();
    assertThat(share).isBetween(0.01, 0.99);
    // What stands at the first full point is the water between there and the end of the stretch.
    assertThat(full.pressure().toPsi())
        .isCloseTo(
            (pipe - full.pipe().toFeet()) * 0.4331 * brine - lossPerFoot * (feet(full) - end),
            within(0.02));
  }

  private static double feet(PipePoint point) {
    return point.distance().toFeet();
  }

  @Test
  void thePartFullPointsLieInTheStretch() {
    LineResult leg = Looked.at("p2-sandstone-knob").caseOf("today").line("WL1").orElseThrow();
    List<Double> empty =
        leg.points().stream().filter(p -> p.partFull()).map(p -> p.distance().toFeet()).toList();

    assertThat(Math.rint(empty.get(0))).isEqualTo(1026);
    assertThat(Math.rint(empty.get(empty.size() - 1))).isEqualTo(1435);
  }

  @Test
  void aCautionOfTheLiquidsBecomesAFindingUnderItsOwnId() {
    List<Map<String, Object>> measured =
        List.of(
            Map.of("temperature", "50 °F", "viscosity", "30 cP"),
            Map.of("temperature", "100 °F", "viscosity", "9 cP"));
    Finding found = P1.the("oil-viscosity-not-measured");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.caseId()).isEmpty();
    assertThat(P1.with("/fluids/oilViscosity", measured).says("oil-viscosity-not-measured"))
        .isFalse();
  }

  @Test
  void aCautionThatHoldsInOneCaseNamesIt() {
    Looked looked =
        P1.with(
                "/fluids/oilViscosity",
                List.of(
                    Map.of("temperature", "65 °F", "viscosity", "30 cP"),
                    Map.of("temperature", "100 °F", "viscosity", "9 cP")))
            .with("/cases/1/season", "winter")
            .with("/site/groundWinter", "20 °F");

    assertThat(looked.the("oil-viscosity-extrapolated").caseId()).contains("all-on");
  }

  @Test
  void wellsThatShareALineAreNamed() {
    Finding found = Looked.at("p3-coyote-creek").the("commingled");

    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words())
        .startsWith("Well 1, Well 2, Well 3, Well 4 and 5 more share Header to separator");
  }

  @Test
  void wellsOnLinesOfTheirOwnAreNot() {
    assertThat(P1.says("commingled")).isFalse();
    assertThat(
            Looked.at("p3-coyote-creek")
                .withEach("/wells", "status", "remove")
                .with("/wells/0/status", "have")
                .says("commingled"))
        .isFalse();
  }
}
