package tankyard.engine.checks.tanks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.BreathingResult;
import tankyard.engine.units.Unit;

class VentCheckTest {
  private static final String ID = "vent-too-small";
  private static final Looked P1 = Looked.at("p1-osage-bend");
  private static final Looked GASSY = Looked.at("g1-windy-gap");

  private static Looked vented(Looked lease, String bore) {
    return lease
        .with("/tanks/0/ventBore", bore)
        .with("/tanks/0/roofPressure", "16 oz/in2")
        .with("/tanks/0/roofVacuum", "0.5 oz/in2");
  }

  private static BreathingResult first(Looked lease) {
    return lease.caseOf("today").breathing().get(0);
  }

  @Test
  void nothingIsHeldAgainstALimitNobodyTyped() {
    assertThat(P1.says(ID)).isFalse();
    assertThat(P1.with("/tanks/0/ventBore", "0.5 in").says(ID)).isFalse();
    assertThat(P1.with("/tanks/0/roofVacuum", "0.5 oz/in2").says(ID)).isFalse();
  }

  @Test
  void aWideVentIsPassedOverAndANarrowOneNamed() {
    assertThat(vented(P1, "4 in").says(ID)).isFalse();
    Finding found = vented(P1, "1 in").the(ID);

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.thingId()).isEqualTo("OT1");
    assertThat(found.words()).contains("drawn in").contains("0.5 oz/in2");
    assertThat(found.wayOut().get(0)).contains(" in clear bore");
  }

  /** A truck of 360 bbl/h and a 210 bbl shell, by hand: 2,016 and 210 scf/h. */
  @Test
  void theTruckDrawsTheAir() {
    assertThat(first(P1).in().value().in(Unit.CUBIC_FOOT_PER_HOUR))
        .isCloseTo(2016 + 209.8, within(0.5));
    assertThat(
            first(P1.with("/practice/truckDraws", "180 bbl/h"))
                .in()
                .value()
                .in(Unit.CUBIC_FOOT_PER_HOUR))
        .isCloseTo(1008 + 209.8, within(0.5));
  }

  @Test
  void justAsMuchAsTheRoofHoldsIsEnough() {
    double inches = first(vented(P1, "1 in")).bore().orElseThrow().value().toInches();

    assertThat(vented(P1, inches * (1 + 1e-9) + " in").says(ID)).isFalse();
    assertThat(vented(P1, inches * (1 - 1e-6) + " in").says(ID)).isTrue();
  }

  @Test
  void aVentThatLiftsAtWhatTheRoofHoldsHasNoBoreWideEnough() {
    Looked stiff = vented(P1, "4 in").with("/tanks/0/ventDraws", "0.5 oz/in2");

    assertThat(first(stiff).bore()).isEmpty();
    assertThat(stiff.the(ID).wayOut().get(0)).contains("lifts well below");
  }

  @Test
  void theWellsGasGoesOutOfTheOilTank() {
    double with = first(GASSY).out().value().in(Unit.CUBIC_FOOT_PER_HOUR);
    double without =
        first(GASSY.withEach("/wells", "gas", Looked.amount(0, "Mcf/d")))
            .out()
            .value()
            .in(Unit.CUBIC_FOOT_PER_HOUR);
    double wells =
        GASSY.evidence().lease().wells().stream()
                .mapToDouble(w -> w.gas().orElseThrow().toMcfPerDay())
                .sum()
            * 1000
            / 24;

    assertThat(with - without).isCloseTo(wells, within(1e-6));
  }

  /** A stuck dump valve passes what comes, or as much as it can if that is less. */
  @Test
  void aStuckDumpValveLetsTheGasToTheWaterTank() {
    BreathingResult water = GASSY.caseOf("today").breathing().get(1);
    Looked narrow =
        GASSY
            .with("/separators/0/dumpValve/cv", "0.05 Cv")
            .withEach("/wells", "gas", Looked.amount(200, "Mcf/d"));
    double comes = 200_000.0 / 24;

    assertThat(water.out().working().toString()).contains("dump valve");
    assertThat(narrow.caseOf("today").breathing().get(1).out().value().in(Unit.CUBIC_FOOT_PER_HOUR))
        .isLessThan(comes);
  }

  @Test
  void ventsNobodyTypedAreNamedOnce() {
    Finding found = P1.withEach("/tanks", "ventBore", null).the("vent-not-typed");
    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    P1.evidence().lease().tanks().forEach(t -> assertThat(found.words()).contains(t.name()));
    assertThat(P1.withEach("/tanks", "ventBore", "4 in").says("vent-not-typed")).isFalse();
  }
}
