package tankyard.engine.checks.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.window.FloatWork;

/**
 * The first public case (oil 0.845, brine 1.06), at 60 degF, with a 10-in ball halfway between the
 * two, 0.9525, on a lever of 6, and a port of 1 in. By hand: 523.6 cubic inches weigh 18.0 lb;
 * rising in the brine they pull 0.0361 x (1.06 - 0.9525) x 523.6 x 6 x 0.7 = 8.5 lb, in water of
 * 1.01 4.6 lb.
 */
class FloatFresherCheckTest {
  private static final String VALVE = "/separators/0/dumpValve/";
  private static final String OTHER = "/separators/0/otherWater";
  private static final Looked LEASE =
      Looked.at("p1-osage-bend")
          .with("/site/groundSummer", "60 °F")
          .with("/site/groundWinter", "60 °F")
          .with(VALVE + "port", "1 in")
          .with(
              VALVE + "floatBall", Map.of("diameter", "10 in", "weight", "0.9525 SG", "lever", 6));

  private static FloatWork work(Looked lease) {
    return lease.window().floatWork().orElseThrow();
  }

  @Test
  void theBallIsWeighedHalfwayAndPullsAsByHand() {
    assertThat(work(LEASE).halfway().value().toPounds()).isCloseTo(18.0, within(0.05));
    assertThat(work(LEASE).opens().value().toPounds()).isCloseTo(8.53, within(0.15));
    assertThat(work(LEASE).closes().value().toPounds()).isCloseTo(8.53, within(0.15));
  }

  @Test
  void fresherWaterLeavesAboutHalfThePull() {
    FloatWork.Fresher fresher = work(LEASE).fresher().orElseThrow();
    assertThat(fresher.water().specific()).isEqualTo(1.01);
    assertThat(fresher.opens().value().toPounds()).isCloseTo(4.56, within(0.15));
    assertThat(fresher.halfway().value().toPounds())
        .isLessThan(work(LEASE).halfway().value().toPounds());
    assertThat(work(LEASE.with(OTHER, "1.06 SG")).fresher()).isEmpty();
  }

  /** What stands behind the valve helps it to open: drained, the float can do less. */
  @Test
  void theFullLegIsTheWindowsLimitAndTheDrainedOneIsLower() {
    double limit =
        LEASE.window().allowed().stream()
            .filter(l -> l.name().endsWith("float"))
            .findFirst()
            .orElseThrow()
            .gauge()
            .value()
            .toPsi();
    assertThat(work(LEASE).legFull().value().toPsi()).isEqualTo(limit);
    assertThat(work(LEASE).legDrained().value().toPsi()).isLessThan(limit);
  }

  @Test
  void aFloatThatNeedsTheFullLegIsLookedAt() {
    String id = "float-stuck-leg-drained";
    double drained = work(LEASE).legDrained().value().toPsi();
    double full = work(LEASE).legFull().value().toPsi();
    assertThat(setTo(drained - 0.01).says(id)).isFalse();
    assertThat(setTo(drained + 0.01).the(id).severity()).isEqualTo(Severity.LOOK);
    assertThat(setTo(drained + 0.01).the(id).wayOut().get(0)).contains("Fill the water leg");
    assertThat(setTo(full + 0.1).says(id)).isFalse();
  }

  /** The regulator set so that the gauge reads that much. */
  private static Looked setTo(double gaugePsi) {
    double overGauge =
        LEASE.window().setting().orElseThrow().gauge().toPsi()
            - LEASE.window().setting().orElseThrow().regulator().value().toPsi();
    return LEASE.with("/separators/0/regulator/setting", gaugePsi - overGauge, "psi");
  }

  @Test
  void aFloatThatCanNoLongerOpenAtTheSettingIsFound() {
    double most = work(LEASE).fresher().orElseThrow().legFull().value().toPsi();
    Looked under = setTo(most - 0.01);
    Looked over = setTo(most + 0.01);
    assertThat(under.says("float-weak-when-fresher")).isFalse();
    assertThat(over.the("float-weak-when-fresher").severity()).isEqualTo(Severity.LOOK);
    assertThat(over.the("float-weak-when-fresher").words()).contains("1.010 SG", "on the gauge");
    assertThat(over.with(OTHER, "1.06 SG").says("float-weak-when-fresher")).isFalse();
  }

  @Test
  void aBallThatNoLongerRisesIsFound() {
    Looked sinks = LEASE.with(OTHER, "0.95 SG");
    assertThat(sinks.the("float-weak-when-fresher").words()).contains("no longer rises");
  }
}
