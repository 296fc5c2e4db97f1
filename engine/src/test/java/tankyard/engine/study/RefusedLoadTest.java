package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;

/** How long a lease goes on after its oil was refused. */
class RefusedLoadTest {
  private static StorageResult storage(Looked lease) {
    return lease.caseOf("today").storage();
  }

  /** 181.9 bbl usable less the 160 of the load at 12 bbl/d: the case's own 1.8 days of slack. */
  @Test
  void oneTankGoesOnFillingOnTopOfTheLoad() {
    StorageResult one = storage(Looked.at("p1-osage-bend"));

    assertThat(one.refusedLoad().orElseThrow().value().toDays()).isCloseTo(1.8, within(0.05));
  }

  /** Two 300s alike: the second takes 28 bbl/d until it is full too. */
  @Test
  void ofTwoTanksTheOtherTakesWhatComes() {
    StorageResult two = storage(Looked.at("p3-coyote-creek"));
    double each = two.oilUsable().orElseThrow().value().toBarrels() / 2;

    assertThat(two.refusedLoad().orElseThrow().value().toDays()).isCloseTo(each / 28, within(1e-9));
    assertThat(each).isGreaterThan(160);
  }

  @Test
  void aLoadLargerThanItsTankLeavesNoDays() {
    StorageResult none = storage(Looked.at("p1-osage-bend").with("/tanks/0/load", "300 bbl"));

    assertThat(none.refusedLoad().orElseThrow().value().toDays()).isZero();
  }
}
