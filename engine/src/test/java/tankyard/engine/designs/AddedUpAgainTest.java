package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.study.NetworkAudit;
import tankyard.engine.units.Unit;

/** Every case keeps what its solves leave over. */
class AddedUpAgainTest {
  @Test
  void theGatheringLinesOfACaseCarryAllItsWellsMake() {
    List<NetworkAudit> audits = Design.of("p1-osage-bend").today().audits();
    assertThat(audits).extracting(NetworkAudit::lines).containsExactly("gathering");
    // 12 bbl/d of oil and 108 of water.
    assertThat(audits.get(0).throughput().in(Unit.BARREL_PER_DAY)).isCloseTo(120, within(1e-9));
    assertHolds(audits.get(0));
  }

  @Test
  void whatIsPumpedAwayIsAddedUpToo() {
    Design flood = Design.of("p5-prairie-flood");
    List<NetworkAudit> audits = flood.today().audits();
    assertThat(audits).extracting(NetworkAudit::lines).containsExactly("gathering", "injection");
    assertThat(audits.get(1).throughput().cubicMetresPerSecond())
        .isCloseTo(
            flood.survey.lease().injectionPumps().get(0).rate().cubicMetresPerSecond(),
            within(1e-12));
    audits.forEach(AddedUpAgainTest::assertHolds);
  }

  private static void assertHolds(NetworkAudit audit) {
    assertThat(audit.massLeft().cubicMetresPerSecond())
        .isLessThanOrEqualTo(1e-8 * audit.throughput().cubicMetresPerSecond());
    assertThat(audit.energyLeft().pascals()).isLessThan(0.01);
  }
}
