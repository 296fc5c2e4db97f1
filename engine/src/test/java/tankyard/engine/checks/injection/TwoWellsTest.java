package tankyard.engine.checks.injection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.study.InjectionResult;

/** One pump, a tee and two injection wells. */
class TwoWellsTest {
  private static final Looked TWO = Looked.at("p5-prairie-flood-two-wells");

  private static List<InjectionResult> of(Looked looked) {
    return looked.caseOf("today").injections();
  }

  private static void assertBothWaysAskForTheSame(List<InjectionResult> both) {
    assertThat(both).hasSize(2);
    assertThat(both.get(0).discharge().value().toPsi())
        .isCloseTo(both.get(1).discharge().value().toPsi(), within(1e-3));
    assertThat(both.stream().mapToDouble(i -> i.intoWell().toBarrelsPerDay()).sum())
        .isCloseTo(both.get(0).rate().toBarrelsPerDay(), within(1e-4));
  }

  @Test
  void wellsAlikeShareEvenly() {
    List<InjectionResult> both = of(TWO);
    assertBothWaysAskForTheSame(both);
    assertThat(both.get(0).intoWell().toBarrelsPerDay()).isCloseTo(420, within(1e-3));
  }

  @Test
  void theTighterWellTakesLessUntilBothWaysAskForTheSame() {
    Looked tighter = TWO.with("/injectionWells/1/resistance", 0.5, "psi/(bbl/d)");
    List<InjectionResult> both = of(tighter);
    assertBothWaysAskForTheSame(both);
    // 120 + 0.25 q = 120 + 0.5 (840 - q) but for the lines: q = 560.
    assertThat(both.get(0).intoWell().toBarrelsPerDay()).isCloseTo(560, within(5.0));
  }

  @Test
  void aWellThatWouldGiveBackIsShutAndTheOtherTakesAll() {
    List<InjectionResult> one = of(TWO.with("/injectionWells/1/pressureAtNoFlow", 900, "psi"));
    assertThat(one).hasSize(1);
    assertThat(one.get(0).wellId()).isEqualTo("IW1");
    assertThat(one.get(0).intoWell().toBarrelsPerDay()).isCloseTo(840, within(1e-6));
    assertThat(one.get(0).wellhead().value().toPsi()).isCloseTo(120 + 0.25 * 840, within(1e-6));
  }

  @Test
  void eachWellIsHeldAgainstWhatGoesIntoIt() {
    Looked rate = TWO.with("/injectionWells/0/permitRate", 209, "bbl/d");
    assertThat(rate.with("/cases/1", null).the("injection-rate-over-permit").words())
        .contains("210 bbl/d");
    Looked pressure = TWO.with("/injectionWells/1/permitPressure", 224, "psi");
    assertThat(pressure.the("injection-over-permit").thingId()).isEqualTo("IW2");
  }

  @Test
  void theRedLineIsTheLimitCarriedBackToThePumpsGauge() {
    InjectionResult one = of(Looked.at("p5-prairie-flood")).get(0);
    assertThat(one.redLine().orElseThrow().value().toPsi())
        .isCloseTo(
            one.limit().orElseThrow().value().toPsi() + one.lineLoss().toPsi(), within(1e-6));
    Looked uphill =
        Looked.at("p5-prairie-flood").with("/injectionWells/0/wellheadHeight", 20, "ft");
    assertThat(of(uphill).get(0).redLine().orElseThrow().value().toPsi())
        .isCloseTo(one.redLine().orElseThrow().value().toPsi() + 20 * 0.4331 * 1.06, within(0.15));
  }

  @Test
  void twoPumpsIntoOneWellMakeItsPressureTogether() {
    Looked both =
        Looked.at("p5-prairie-flood")
            .plus(
                "/injectionPumps",
                java.util.Map.of(
                    "id", "IP2",
                    "name", "Second pump",
                    "at", java.util.Map.of("east", "72 ft", "north", "-60 ft"),
                    "ground", "1000 ft",
                    "status", "new",
                    "rate", "180 bbl/d",
                    "suctionHeight", "0 ft",
                    "dischargeHeight", "0 ft"))
            .plus(
                "/lines",
                java.util.Map.of(
                    "id", "IL9",
                    "name", "Second injection line",
                    "service", "injection",
                    "from", "IP2",
                    "to", "IW1",
                    "pipe", "steel-2-80",
                    "status", "new"));
    List<InjectionResult> found = of(both);
    assertThat(found).hasSize(2);
    assertThat(found)
        .allSatisfy(i -> assertThat(i.wellhead().value().toPsi()).isCloseTo(315, within(1e-6)));
    assertThat(found.get(0).intoWell().toBarrelsPerDay()).isCloseTo(600, within(1e-6));
    assertThat(found.get(1).intoWell().toBarrelsPerDay()).isCloseTo(180, within(1e-6));
  }
}
