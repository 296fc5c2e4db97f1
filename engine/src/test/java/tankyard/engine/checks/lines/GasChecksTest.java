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
import tankyard.engine.study.GasInLine;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.VesselGas;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Unit;

/** Gas in the flow lines and in a vessel meant to be full of liquid. */
class GasChecksTest {
  private static final Looked DRY = Looked.at("p1-osage-bend");
  private static final Looked GASSY = gas(DRY, 3);

  private static Looked gas(Looked lease, double mcf) {
    return lease.withEach("/wells", "gas", Looked.amount(mcf, "Mcf/d"));
  }

  private static Looked withPart(double percent) {
    return GASSY.seeing(
        c ->
            CaseEdits.separators(
                c,
                s ->
                    s.withGas(
                        s.gas()
                            .map(
                                g ->
                                    new VesselGas(
                                        g.gauge(),
                                        g.free(),
                                        CaseEdits.computed(Fraction.ofPercent(percent)),
                                        g.section())))));
  }

  private static LineResult line(Looked lease, String id) {
    return lease.caseOf("today").line(id).orElseThrow();
  }

  @Test
  void gasThatFillsTheVesselIsToBeFixed() {
    Finding found = GASSY.the("gas-in-full-vessel");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.thingId()).isEqualTo("S1");
    assertThat(found.words()).contains("92 %").contains("the 1 %").contains("not valid");
    assertThat(found.wayOut().get(0)).contains("gas boot").contains("in across");
    assertThat(GASSY.window().notValid().orElseThrow().caseIds())
        .containsExactly("today", "all-on");
    assertThat(DRY.says("gas-in-full-vessel")).isFalse();
    assertThat(DRY.window().notValid()).isEmpty();
  }

  @Test
  void exactlyTheLimitStillCountsAsFull() {
    assertThat(withPart(1).says("gas-in-full-vessel")).isFalse();
    assertThat(withPart(1.0001).says("gas-in-full-vessel")).isTrue();
  }

  /** By hand: Va = 0.12 sqrt((rl - rg)/rg), A = Q/Va, D = sqrt(4 A/pi). */
  @Test
  void theGasSectionIsWhatSoudersAndBrownAskFor() {
    VesselGas gas = GASSY.caseOf("today").separator("S1").orElseThrow().gas().orElseThrow();
    double psia = gas.gauge().toPsi() + 14.1726;
    double cubicFeetPerSecond =
        gas.free().toMcfPerDay() * 1000 / 86400 * 14.696 / psia * 529.67 / 519.67;
    double gasDensity = psia * 28.964 * 0.75 / (10.73158 * 529.67);
    double oilDensity = GASSY.evidence().survey().lease().fluids().oil().specific() * 62.37;
    double most = 0.12 * Math.sqrt((oilDensity - gasDensity) / gasDensity);
    double inches = 12 * Math.sqrt(4 * cubicFeetPerSecond / most / Math.PI);

    assertThat(gas.section().value().in(Unit.INCH)).isCloseTo(inches, within(0.01 * inches));
  }

  @Test
  void linesWithGasSayWhatTheLawIsWorth() {
    Finding found = GASSY.the("gas-liquid-correlation");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("W1 to separator").contains("a quarter");
    assertThat(DRY.says("gas-liquid-correlation")).isFalse();
  }

  @Test
  void aFloodOfGasNearsItsSpeedOfSound() {
    Finding found = gas(DRY, 1500).the("gas-near-sound");

    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("not to be used");
    assertThat(GASSY.says("gas-near-sound")).isFalse();
  }

  @Test
  void fastGasMayWearTheWall() {
    LineResult line = line(GASSY, "FL-W1");
    double limit = line.gas().flatMap(GasInLine::wearSpeed).orElseThrow().value().toFeetPerSecond();
    Looked fast = GASSY.seeing(c -> CaseEdits.lines(c, l -> CaseEdits.atSpeed(l, 1.001 * limit)));
    Looked onTheLimit = GASSY.seeing(c -> CaseEdits.lines(c, l -> CaseEdits.atSpeed(l, limit)));

    assertThat(fast.all("gas-line-wear")).extracting(Finding::thingId).contains("FL-W1");
    assertThat(onTheLimit.all("gas-line-wear"))
        .extracting(Finding::thingId)
        .doesNotContain("FL-W1");
    assertThat(fast.says("line-fast")).isTrue(); // the legs; a gassy line is not held to it
    assertThat(fast.all("line-fast")).extracting(Finding::thingId).doesNotContain("FL-W1");
  }

  @Test
  void dryGasIsNotCountedAndSaid() {
    Looked dry =
        DRY.with("/wells/0/oil", 0, "bbl/d")
            .with("/wells/0/water", 0, "bbl/d")
            .with("/wells/0/gas", 5, "Mcf/d");

    assertThat(dry.the("gas-without-liquid").thingId()).isEqualTo("W1");
    assertThat(line(dry, "FL-W1").gas()).isEmpty();
    assertThat(GASSY.says("gas-without-liquid")).isFalse();
  }

  @Test
  void aLoopSaysThatItsGasIsNotCounted() {
    Looked looped =
        GASSY.plus(
            "/lines",
            Map.of(
                "id", "FL-X",
                "name", "Cross line",
                "from", "W1",
                "to", "W2",
                "service", "flow-line",
                "status", "new",
                "pipe", "poly-2"));

    assertThat(looped.all("gas-in-loop"))
        .extracting(Finding::thingId)
        .containsExactlyInAnyOrder("FL-W1", "FL-W2", "FL-X");
    assertThat(line(looped, "FL-X").gas()).isEmpty();
    assertThat(line(looped, "FL-W3").gas()).isPresent();
    assertThat(GASSY.says("gas-in-loop")).isFalse();
    assertThat(List.of("FL-W3", "FL-W4"))
        .allSatisfy(
            id ->
                assertThat(line(looped, id).friction().value().toPsi())
                    .isCloseTo(line(GASSY, id).friction().value().toPsi(), within(1e-6)));
  }
}
