package tankyard.engine.checks.injection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.SharedWell;

/**
 * The fifth public case: a well of 120 + 0.25 psi for each bbl/d while pumping, limit 315 psi by
 * the screening form, its pump at 600 bbl/d 16.8 h a day for 420 bbl/d of water (by hand). Another
 * lease that pumps 180 bbl/d brings it to 120 + 0.25 x 780 = 315.0 psi, the case's own figure for
 * 780.
 */
class SharedWellCheckTest {
  private static final String WELL = "/injectionWells/0/";
  private static final Looked P5 = Looked.at("p5-prairie-flood");

  private static Looked shared(String rate, String hours) {
    return P5.with(WELL + "otherRate", rate).with(WELL + "otherHours", hours);
  }

  private static SharedWell today(Looked lease) {
    return lease.evidence().cases().get(0).sharedWells().get(0);
  }

  @Test
  void bothRatesMakeThePressure() {
    assertThat(P5.evidence().cases().get(0).sharedWells()).isEmpty();
    assertThat(today(shared("180 bbl/d", "6 h")).bothOn().value().toPsi())
        .isCloseTo(315.0, within(0.01));
  }

  /** 16.8 h and 6 h fit into a day and meet 16.8 x 6/24 = 4.2 h by chance; with 10 h 2.8 h must. */
  @Test
  void hoursThatFitIntoADayNeedNotMeet() {
    SharedWell six = today(shared("180 bbl/d", "6 h"));
    assertThat(six.mustOverlap().value().toHours()).isZero();
    assertThat(six.byChance().value().toHours()).isCloseTo(4.2, within(0.001));
    SharedWell ten = today(shared("180 bbl/d", "10 h"));
    assertThat(ten.mustOverlap().value().toHours()).isCloseTo(2.8, within(0.001));
  }

  /** 420 bbl/d of our own and 180 x 6/24 = 45 of theirs. */
  @Test
  void theDayCountsBoth() {
    assertThat(today(shared("180 bbl/d", "6 h")).together().value().toBarrelsPerDay())
        .isCloseTo(465, within(0.01));
    Looked permit = shared("180 bbl/d", "6 h").with(WELL + "permitRate", "460 bbl/d");
    assertThat(permit.says("injection-rate-over-permit")).isTrue();
    assertThat(permit.with(WELL + "otherRate", null).says("injection-rate-over-permit"))
        .isEqualTo(P5.with(WELL + "permitRate", "460 bbl/d").says("injection-rate-over-permit"));
  }

  /** What another lease puts down a well we have no line to is not ours to answer for. */
  @Test
  void aWellWeDoNotPumpIntoIsNotOurs() {
    Looked permit = shared("580 bbl/d", "24 h").with(WELL + "permitRate", "500 bbl/d");
    assertThat(permit.says("injection-rate-over-permit")).isTrue();
    assertThat(permit.with("/lines", List.of()).says("injection-rate-over-permit")).isFalse();
  }

  @Test
  void overThePermitIsAStopOnlyWhereTheyMustMeet() {
    Looked six = shared("200 bbl/d", "6 h").with(WELL + "permitPressure", "315 psi");
    Looked ten = six.with(WELL + "otherHours", "10 h");
    assertThat(six.the("shared-well-over-permit").severity()).isEqualTo(Severity.FIX);
    assertThat(ten.the("shared-well-over-permit").severity()).isEqualTo(Severity.STOP);
  }

  @Test
  void justAtThePermitItDoesNotShow() {
    Looked lease = shared("200 bbl/d", "6 h");
    double most =
        lease.evidence().cases().stream()
            .flatMap(c -> c.sharedWells().stream())
            .mapToDouble(w -> w.bothOn().value().toPsi())
            .max()
            .orElseThrow();
    assertThat(lease.with(WELL + "permitPressure", most, "psi").says("shared-well-over-permit"))
        .isFalse();
    assertThat(
            lease.with(WELL + "permitPressure", most - 0.1, "psi").says("shared-well-over-permit"))
        .isTrue();
  }
}
