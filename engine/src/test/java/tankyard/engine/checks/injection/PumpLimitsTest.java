package tankyard.engine.checks.injection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;

/**
 * The fifth public case. Its well's limit is 315 psi at the wellhead by the screening form; its
 * water tank's nozzle stands at its bottom, and the pump stops at 4 ft.
 */
class PumpLimitsTest {
  private static final Looked P5 = Looked.at("p5-prairie-flood");
  private static final String PUMP = "/injectionPumps/0/";
  private static final String RELIEF = PUMP + "relief";

  private static double redLinePsi() {
    return P5.evidence().cases().stream()
        .flatMap(c -> c.injections().stream())
        .mapToDouble(i -> i.redLine().orElseThrow().value().toPsi())
        .min()
        .orElseThrow();
  }

  @Test
  void aReliefAboveTheRedLineDoesNotGuardTheWell() {
    assertThat(redLinePsi()).isBetween(315.0, 330.0);
    Finding found = P5.with(RELIEF, "500 psi").the("pump-relief-high");
    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("500 psi", "at its limit at");
    assertThat(P5.with(RELIEF, redLinePsi() - 0.01, "psi").says("pump-relief-high")).isFalse();
    assertThat(P5.with(RELIEF, redLinePsi() + 0.01, "psi").says("pump-relief-high")).isTrue();
  }

  @Test
  void withoutAReliefOnlyThatIsTold() {
    Looked none = P5.with(RELIEF, null);
    assertThat(none.says("pump-relief-high")).isFalse();
    assertThat(none.says("pump-relief-missing")).isTrue();
  }

  private static Looked stopping(String pumpOff, String nozzle) {
    int tank = waterTank();
    return P5.with("/tanks/" + tank + "/pumpOff", pumpOff)
        .with("/tanks/" + tank + "/outletHeight", nozzle);
  }

  private static int waterTank() {
    return (int)
        P5.evidence().lease().tanks().stream().takeWhile(t -> t.pumpOff().isEmpty()).count();
  }

  @Test
  void aPumpThatStopsAtItsNozzleSucksAir() {
    assertThat(P5.says("pump-off-under-nozzle")).isFalse();
    assertThat(stopping("1.01 ft", "1 ft").says("pump-off-under-nozzle")).isFalse();
    Finding at = stopping("1 ft", "1 ft").the("pump-off-under-nozzle");
    assertThat(at.severity()).isEqualTo(Severity.FIX);
    assertThat(stopping("0.5 ft", "1 ft").the("pump-off-under-nozzle").words())
        .contains("0.5 ft", "1 ft", "air");
    assertThat(stopping("0.5 ft", "1 ft").with("/lines", List.of()).says("pump-off-under-nozzle"))
        .isFalse();
  }

  @Test
  void aNeedNobodyTypedIsNotCheckedAndSaidSo() {
    Looked unknown = P5.with(PUMP + "suctionNeeded", null);
    assertThat(unknown.the("suction-need-unknown").severity()).isEqualTo(Severity.NOTE);
    assertThat(P5.with(PUMP + "suctionNeeded", "8 ft").says("suction-need-unknown")).isFalse();
    assertThat(unknown.with("/lines", List.of()).says("suction-need-unknown")).isFalse();
  }
}
