package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;

/** What a load weighs on the road, and how often a pump starts. */
class LoadAndStartsTest {
  private static StorageResult storage(Looked lease) {
    return lease.evidence().cases().get(0).storage();
  }

  /** By hand: 180 bbl x 42 gal x 8.337 lb at 35 API, 0.8498 of water: 53,600 lb. */
  @Test
  void oneHundredAndEightyBarrelsOf35ApiWeigh53600Pounds() {
    Looked lease =
        Looked.at("p5-prairie-flood")
            .with("/practice/load", 180, "bbl")
            .with("/fluids/oil", 35, "°API");

    assertThat(storage(lease).loadWeight().orElseThrow().value().toPounds())
        .isCloseTo(53_600, within(50.0));
  }

  /** The fifth public case: runs 10.7 h and rests 4.6 h, so 24/15.3 = 1.57 starts a day. */
  @Test
  void aPumpStartsAsOftenAsItRunsAndRestsInADay() {
    assertThat(storage(Looked.at("p5-prairie-flood")).startsADay().orElseThrow().value().ratio())
        .isCloseTo(1.57, within(0.02));
  }

  @Test
  void aPumpThatCannotKeepUpNeverStops() {
    Looked small = Looked.at("p5-prairie-flood").with("/injectionPumps/0/rate", 400, "bbl/d");

    assertThat(storage(small).pumpRuns()).isEmpty();
    assertThat(storage(small).startsADay()).isEmpty();
  }
}
