package tankyard.engine.checks.injection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.PumpDrive;
import tankyard.engine.units.Unit;

/**
 * The pump of the fifth public case, 600 bbl/d at 300 rpm, with three plungers. By hand: 1.25 in by
 * 2.5 in sweep 3 x 1.2272 x 2.5 = 9.204 in3 a turn, less 5 % 8.744 in3, of 9,702 in3 to the barrel:
 * 389.3 bbl/d at 300 rpm; 600 bbl/d take 462 rpm, and with 18 in on the pump 4.76 in on a motor of
 * 1,750 rpm.
 */
class PumpRateCheckTest {
  private static final String PUMP = "/injectionPumps/0/";
  private static final Looked LEASE =
      Looked.at("p5-prairie-flood")
          .with(PUMP + "plunger", "1.25 in")
          .with(PUMP + "stroke", "2.5 in")
          .with(PUMP + "sheave", "18 in");

  private static PumpDrive drive() {
    return LEASE.evidence().yard().drives().get(0);
  }

  @Test
  void speedAndSheaveFollowFromThePlungers() {
    assertThat(drive().delivers().orElseThrow().value().toBarrelsPerDay())
        .isCloseTo(389.3, within(0.1));
    assertThat(drive().speed().value().toRpm()).isCloseTo(462.3, within(0.2));
    assertThat(drive().motorSheave().orElseThrow().value().in(Unit.INCH))
        .isCloseTo(4.755, within(0.005));
  }

  @Test
  void aPumpThatDoesNotMakeItsRateIsFoundWithTheWayThere() {
    Finding found = LEASE.the("pump-rate-off");

    assertThat(found.severity()).isEqualTo(Severity.LOOK);
    assertThat(found.words()).contains("389 bbl/d").contains("600 bbl/d");
    assertThat(found.wayOut().get(0)).contains("462 rpm").contains("4.8 in");
  }

  @Test
  void withinFivePercentIsCloseEnough() {
    double rate = drive().delivers().orElseThrow().value().toBarrelsPerDay();

    assertThat(pumps(rate / 1.0501).says("pump-rate-off")).isTrue();
    assertThat(pumps(rate / 1.0499).says("pump-rate-off")).isFalse();
    assertThat(pumps(rate / 0.9501).says("pump-rate-off")).isFalse();
    assertThat(pumps(rate / 0.9499).says("pump-rate-off")).isTrue();
  }

  private static Looked pumps(double barrelsPerDay) {
    return LEASE.with(PUMP + "rate", barrelsPerDay, "bbl/d");
  }

  @Test
  void withoutPlungersOrSpeedNothingIsSaid() {
    assertThat(Looked.at("p5-prairie-flood").says("pump-rate-off")).isFalse();
    assertThat(LEASE.with(PUMP + "speed", null).says("pump-rate-off")).isFalse();
    assertThat(LEASE.with(PUMP + "stroke", null).says("pump-rate-off")).isFalse();
  }
}
