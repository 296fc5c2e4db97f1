package tankyard.engine.checks.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.TreaterResult;
import tankyard.engine.units.Unit;

/**
 * The first public case with its oil heated to 120 degF: by hand, in a case of Qo and Qw barrels a
 * day from ground at T, (150 Qo + 350 Qw/20) (120 - T)/24/0.7 Btu an hour with a twentieth of the
 * water left in.
 */
class TreaterChecksTest {
  private static final Looked LEASE =
      Looked.at("p1-osage-bend").with("/practice/treatAt", 120, "°F");

  private static CaseResult first(Looked lease) {
    return lease.evidence().cases().get(0);
  }

  private static TreaterResult treater(Looked lease) {
    return first(lease).treater().orElseThrow();
  }

  @Test
  void heatIsThatOfTheSumByHand() {
    DesignCase first = LEASE.evidence().lease().cases().get(0);
    double oil =
        LEASE.evidence().lease().wells().stream().mapToDouble(w -> w.oil().toBarrelsPerDay()).sum();
    double water =
        LEASE.evidence().lease().wells().stream()
            .mapToDouble(w -> w.water().toBarrelsPerDay())
            .sum();
    double warmed = 120 - treater(LEASE).from().toFahrenheit();

    assertThat(first.running()).isEqualTo(DesignCase.Running.AVERAGE);
    assertThat(treater(LEASE).duty().value().in(Unit.BTU_PER_HOUR))
        .isCloseTo((150 * oil + 350 * water / 20) * warmed / 24 / 0.7, within(0.01));
    assertThat(treater(LEASE).dutyWithWater().value().in(Unit.BTU_PER_HOUR))
        .isCloseTo((150 * oil + 350 * water) * warmed / 24 / 0.7, within(0.01));
    // 91,500 Btu in a gallon, 30 days in the month, and so many barrels sold in it.
    assertThat(treater(LEASE).propane().value().in(Unit.GALLON))
        .isCloseTo(
            treater(LEASE).duty().value().in(Unit.BTU_PER_HOUR) * 720 / 91_500, within(0.01));
    assertThat(treater(LEASE).propaneABarrel().orElseThrow().value().in(Unit.GALLON))
        .isCloseTo(treater(LEASE).propane().value().in(Unit.GALLON) / 30 / oil, within(1e-6));
  }

  @Test
  void whereNobodyThinksOfATreaterNothingIsSaid() {
    Looked without = Looked.at("p1-osage-bend");

    assertThat(first(without).treater()).isEmpty();
    assertThat(without.says("fired-vessel")).isFalse();
    assertThat(without.says("treater-gas-short")).isFalse();
  }

  @Test
  void aTreaterBringsTheCaution() {
    assertThat(LEASE.the("fired-vessel").severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void gasBurntIsHeldAgainstTheWells() {
    double most =
        LEASE.evidence().cases().stream()
            .mapToDouble(c -> c.treater().orElseThrow().gas().value().in(Unit.MCF_PER_DAY))
            .max()
            .orElseThrow();
    Finding found = gas(most * 0.999).the("treater-gas-short");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("would burn");
    assertThat(gas(most * 1.001).says("treater-gas-short")).isFalse();
    assertThat(LEASE.says("treater-gas-short")).isFalse();
  }

  /** All of it from the first well. */
  private static Looked gas(double mcfPerDay) {
    return LEASE.with("/wells/0/gas", mcfPerDay, "Mcf/d");
  }
}
