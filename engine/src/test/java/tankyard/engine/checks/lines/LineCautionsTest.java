package tankyard.engine.checks.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Material;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.CaseCaution;

/** What friction and rating say must be read with care, told once with the lines it holds for. */
class LineCautionsTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked WARM = P1.withEach("/wells", "headTemperature", "110 °F");

  private static CaseCaution caution(Looked looked, String caseId, String id) {
    return looked.caseOf(caseId).cautions().stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLineBetweenLaminarAndTurbulentIsSaidWithItsReynoldsNumber() {
    Looked knob = Looked.at("g1-windy-gap");
    Finding found = knob.the("flow-in-transition");

    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.thingId()).isEqualTo("WL1");
    assertThat(found.words()).startsWith("Water leg: At Reynolds number").contains("2000 to 4000");
    for (var result : knob.evidence().cases()) {
      List<String> told =
          result.cautions().stream()
              .filter(c -> c.id().equals("flow-in-transition"))
              .flatMap(c -> c.things().stream())
              .toList();
      assertThat(told)
          .containsExactlyElementsOf(
              result.lines().stream()
                  .filter(l -> l.regime().equals("between laminar and turbulent"))
                  .map(l -> l.lineId())
                  .toList());
    }
  }

  @Test
  void aVeryRoughWallIsSaid() {
    double boreIn = P1.evidence().survey().laid().get("WL1").pipe().bore().toInches();

    assertThat(P1.says("wall-very-rough")).isFalse();
    Looked rough = P1.withEach("/ownPipes", "roughness", Looked.amount(0.06 * boreIn, "in"));
    assertThat(caution(rough, "today", "wall-very-rough").things()).contains("WL1");
  }

  @Test
  void aTypedRatingAboveSeventyThreeDegreesIsSaid() {
    assertThat(P1.says("pipe-rating-typed-at-73")).isFalse();
    assertThat(WARM.the("pipe-rating-typed-at-73").words()).contains("73 °F");
    assertThat(
            Looked.at("p6-black-wax")
                .withEach("/wells", "headTemperature", "180 °F")
                .the("pipe-rating-typed-at-73")
                .words())
        .contains("180 °F");
  }

  @Test
  void plasticUnderFluidOfUnknownTemperatureIsNotCheckedForHeat() {
    Finding found = P1.the("pipe-heat-unknown");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("W1 to separator").contains("Type the temperature");
    assertThat(caution(P1, "today", "pipe-heat-unknown").things())
        .contains("FL-W1", "FL-W2", "FL-W3", "FL-W4", "WL1", "OL1");
    assertThat(WARM.says("pipe-heat-unknown")).isFalse();
  }

  @Test
  void onlyTheLinesBelowTheUntypedWellAreNamed() {
    Looked one = WARM.with("/wells/1/headTemperature", null);
    CaseCaution caution = caution(one, "today", "pipe-heat-unknown");

    assertThat(caution.things()).containsExactlyInAnyOrder("FL-W2", "WL1", "OL1");
    assertThat(caution.words()).contains("Well 2").doesNotContain("Well 3");
  }

  @Test
  void theLiquidsLawsAreAskedAtTheWarmEndToo() {
    Looked hot = P1.withEach("/wells", "headTemperature", "220 °F");

    assertThat(WARM.says("water-temperature-out-of-range")).isFalse();
    assertThat(hot.the("water-temperature-out-of-range").words())
        .contains("W1 to separator")
        .contains("220 °F");
  }

  @Test
  void aTighterEmulsionCostsMore() {
    Looked wax = Looked.at("p6-black-wax");

    assertThat(coldFriction(wax.with("/fluids/tightness", "loose")))
        .isLessThan(coldFriction(wax.with("/fluids/tightness", "medium")));
    assertThat(coldFriction(wax.with("/fluids/tightness", "medium")))
        .isLessThan(coldFriction(wax.with("/fluids/tightness", "tight")));
  }

  private static double coldFriction(Looked looked) {
    return looked.evidence().cases().get(2).line("FL-W1").orElseThrow().friction().value().toPsi();
  }

  @Test
  void steelIsNotAskedFor() {
    assertThat(Material.STEEL.weakensWithHeat()).isFalse();
    assertThat(Material.POLYETHYLENE.weakensWithHeat()).isTrue();
  }

  @Test
  void aLegIsRatedAsWarmAsWhatComesIntoItsVessel() {
    assertThat(caution(WARM, "today", "pipe-rating-typed-at-73").things()).contains("WL1", "OL1");
  }

  @Test
  void theRatingAtTheGroundStaysALimitOfTheWindow() {
    assertThat(P1.window().allowed()).anyMatch(l -> l.name().endsWith("pipe rating"));
    assertThat(P1.window().notChecked()).anyMatch(w -> w.startsWith("Heat on plastic pipe:"));
    assertThat(WARM.window().notChecked()).noneMatch(w -> w.startsWith("Heat on plastic pipe:"));
  }
}
