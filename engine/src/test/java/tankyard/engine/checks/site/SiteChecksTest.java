package tankyard.engine.checks.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/** What is unfinished, what was taken for granted, and what needs care. */
class SiteChecksTest {
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked P3 = Looked.at("p3-coyote-creek");

  @Test
  void everyDiagnosisIsPassedOn() {
    Looked cut = P1.with("/lines/0", null).with("/lines/0/pipe", "no-such-pipe");

    assertThat(P1.evidence().survey().diagnoses()).isEmpty();
    assertThat(cut.all("no-way-to-separator"))
        .extracting(Finding::thingId)
        .containsExactly("W1", "W2");
    assertThat(cut.the("pipe-unknown").severity()).isEqualTo(Severity.FIX);
    assertThat(cut.all("no-way-to-separator").get(0).severity()).isEqualTo(Severity.FIX);
    assertThat(cut.findings())
        .extracting(Finding::words)
        .containsAll(cut.evidence().survey().diagnoses().stream().map(d -> d.words()).toList());
  }

  @Test
  void newTanksBringTheWordToAskFirst() {
    assertThat(P1.the("ask-first").severity()).isEqualTo(Severity.NOTE);
    assertThat(
            P1.withEach("/tanks", "status", "have")
                .withEach("/separators", "status", "have")
                .says("ask-first"))
        .isFalse();
  }

  @Test
  void anEmptyLeaseIsLookedAtAndNotStopped() {
    Looked empty =
        P1.with("/lines", List.of())
            .with("/wells", List.of())
            .with("/separators", List.of())
            .with("/tanks", List.of())
            .with("/cases", List.of());

    assertThat(empty.says("no-wells")).isTrue();
    assertThat(empty.says("no-separator")).isTrue();
    assertThat(empty.says("no-cases")).isTrue();
    assertThat(empty.findings())
        .extracting(Finding::severity)
        .doesNotContain(Severity.STOP, Severity.FIX);
  }

  @Test
  void assumedValuesAreCountedAndTheTellingOnesNamed() {
    Finding found = P1.the("values-assumed");

    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words())
        .startsWith(P1.evidence().assumptions().size() + " values are assumed")
        .contains("regulator builds up 1.5 psi");
    assertThat(P1.with("/separators/0/regulator/buildUp", "1 psi").the("values-assumed").words())
        .startsWith((P1.evidence().assumptions().size() - 1) + " values")
        .doesNotContain("regulator builds up");
  }

  @Test
  void aLeaseWithEveryValueTypedAssumesNothing() {
    Looked typed =
        P1.with("/site/groundWinter", "45 °F")
            .with("/practice/depth", "3 ft")
            .with("/practice/roadOut", "3 d")
            .with("/practice/nightOut", "12 h")
            .with("/practice/reaction", "30 min")
            .with("/practice/atOnce", "95 %")
            .with("/separators/0/regulator/buildUp", "1.5 psi")
            .with("/tanks/1/pumpOn", "7 ft")
            .with("/tanks/1/pumpOff", "3 ft")
            .with("/fluids/inversion", "60 %")
            .with("/fluids/tightness", "medium")
            .with("/practice/heatLoss", "1 Btu/(h.ft2.°F)")
            .withEach("/wells", "headTemperature", "70 °F")
            .with(
                "/fluids/oilViscosity",
                List.of(
                    Map.of("temperature", "50 °F", "viscosity", "30 cP"),
                    Map.of("temperature", "100 °F", "viscosity", "9 cP")));

    assertThat(typed.evidence().assumptions()).isEmpty();
    assertThat(typed.says("values-assumed")).isFalse();
  }

  @Test
  void howOilCarriesWaterIsAssumedOnlyWhereItDoesInSomeLine() {
    Looked wax = Looked.at("p6-black-wax");
    String turns = "water carries the oil from a water cut of 60 %";

    assertThat(words(wax)).contains(turns).anyMatch(w -> w.startsWith("emulsion as thick as"));
    assertThat(words(wax.with("/fluids/inversion", "65 %")))
        .noneMatch(w -> w.startsWith("water carries"))
        .anyMatch(w -> w.startsWith("emulsion as thick as"));
    // Dry oil carries no water; and past the turn, as in P1's wells, the water carries the oil.
    for (Looked none : List.of(wax.withEach("/wells", "water", "0 bbl/d"), P1)) {
      assertThat(words(none))
          .noneMatch(w -> w.startsWith("water carries"))
          .noneMatch(w -> w.startsWith("emulsion as thick as"));
    }
  }

  @Test
  void aWellWhoseTemperatureNobodyTypedIsAssumedAsColdAsTheGround() {
    Looked one =
        P1.withEach("/wells", "headTemperature", "90 °F").with("/wells/1/headTemperature", null);

    assertThat(one.evidence().assumptions())
        .filteredOn(a -> a.words().equals("its fluid comes as cold as the ground"))
        .extracting(a -> a.thingId())
        .containsExactly("W2");
  }

  private static List<String> words(Looked looked) {
    return looked.evidence().assumptions().stream().map(a -> a.words()).toList();
  }

  @Test
  void openHatchesAreCautionedOverWhereOilIsTanked() {
    assertThat(P1.the("h2s-unknown").wayOut().get(0)).contains("gas meter");
    assertThat(P1.withEach("/wells", "oil", "0 bbl/d").says("h2s-unknown")).isFalse();
    assertThat(P1.with("/tanks/0/status", "remove").says("h2s-unknown")).isFalse();
  }

  @Test
  void oilTanksBringTheWordOnLightningAndNameWhereOilSplashes() {
    assertThat(P1.the("lightning-and-static").words()).contains("Oil tank 1");
    Looked low = P1.withEach("/tanks", "inletHeight", "1 ft").withEach("/tanks", "entry", "bottom");
    assertThat(low.the("lightning-and-static").words()).doesNotContain("Oil tank 1");
    assertThat(P1.withEach("/tanks", "duty", "water").says("lightning-and-static")).isFalse();
  }

  @Test
  void tanksAndVesselsBringTheWordOnGoingIn() {
    assertThat(P1.the("confined-space").words()).contains("Tanks and vessels", "ounces");
    Looked tanks = P1.withEach("/separators", "status", "remove");
    assertThat(tanks.the("confined-space").words()).doesNotContain("vessels");
    assertThat(tanks.withEach("/tanks", "status", "remove").says("confined-space")).isFalse();
  }

  @Test
  void hotWorkIsCautionedOverWhereAUsedTankIsTouched() {
    assertThat(P1.says("hot-work")).isFalse();
    assertThat(P1.with("/tanks/0/status", "have").the("hot-work").words()).contains("Oil tank 1");
    assertThat(P1.with("/tanks/0/status", "remove").the("hot-work").words()).contains("Oil tank 1");
    assertThat(
            P1.with("/tanks/0/status", "have")
                .withEach("/lines", "status", "have")
                .says("hot-work"))
        .isFalse();
  }

  @Test
  void newLinesAreToBeCalledInBeforeDigging() {
    assertThat(P1.the("call-before-digging").words()).startsWith("7 new lines");
    assertThat(P1.withEach("/lines", "status", "have").says("call-before-digging")).isFalse();
    assertThat(P1.withEach("/lines", "depth", "0 ft").says("call-before-digging")).isFalse();
    assertThat(
            P1.withEach("/lines", "status", "have")
                .with("/lines/0/status", "new")
                .the("call-before-digging")
                .words())
        .startsWith("1 new line is");
  }

  @Test
  void aTrenchIsDeepFromFourFeetAndToBeShoredFromFive() {
    Looked four = P1.with("/lines/0/depth", "4 ft");

    assertThat(P1.says("deep-trench")).isFalse();
    assertThat(P1.with("/lines/0/depth", "3.99 ft").says("deep-trench")).isFalse();
    assertThat(four.the("deep-trench").wayOut().get(0)).startsWith("A ladder");
    assertThat(P1.with("/lines/0/depth", "5 ft").the("deep-trench").wayOut().get(0))
        .startsWith("Slope, shore");
    assertThat(four.with("/lines/0/status", "have").says("deep-trench")).isFalse();
  }

  @Test
  void aDeepPegCountsWhereTheLineItselfIsShallow() {
    assertThat(Looked.at("p2-sandstone-knob-deeper").the("deep-trench").words()).contains("8.5 ft");
  }

  @Test
  void tanksOverTheFederalThresholdNeedAPlan() {
    Looked one = P1.with("/tanks/1/status", "remove");
    // 10 ft across: 78.54 ft2, 587.5 gal a foot; 1,320 gal is 2.2468 ft.
    String shell = "/tanks/0/shellHeight";
    Looked small =
        one.with("/tanks/0/overflowHeight", "2 ft")
            .with("/tanks/0/switchHeight", "1.9 ft")
            .with("/tanks/0/outletHeight", "0.5 ft");

    assertThat(P1.the("spill-plan").words()).contains("17,626 gal").contains("licensed engineer");
    assertThat(one.the("spill-plan").words()).contains("8,813 gal").contains("clean record");
    assertThat(small.with(shell, "2.2467 ft").says("spill-plan")).isFalse();
    assertThat(small.with(shell, "2.2469 ft").says("spill-plan")).isTrue();
    assertThat(P3.says("spill-plan")).isTrue();
  }
}
