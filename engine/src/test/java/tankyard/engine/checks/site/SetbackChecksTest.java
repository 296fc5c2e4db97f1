package tankyard.engine.checks.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Looked;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.Setback;

/**
 * A creek that runs from south to north, 200 ft east of the middle of the only tank on the lease,
 * which is 10 ft wide: its shell stands 195 ft from the water.
 */
class SetbackChecksTest {
  private static final Looked TWO_TANKS =
      Looked.at("p1-osage-bend")
          .with("/lines", List.of())
          .with("/separators", List.of())
          .with("/tanks/2", null)
          .with("/tanks/0/at", Map.of("east", "1000 ft", "north", "1000 ft"))
          .plus(
              "/landmarks",
              Map.of(
                  "id", "LM1",
                  "name", "Dry Fork",
                  "corners",
                      List.of(
                          Map.of("east", "1200 ft", "north", "0 ft"),
                          Map.of("east", "1200 ft", "north", "5000 ft")),
                  "status", "have",
                  "what", "creek"));
  private static final Looked LEASE = TWO_TANKS.with("/tanks/1", null);
  private static final String SETBACK = "/landmarks/0/setback";

  private static Setback setback(Looked lease) {
    return lease.evidence().yard().setbacks().get(0);
  }

  @Test
  void theDistanceRunsFromTheShellToTheNearestSide() {
    assertThat(LEASE.evidence().lease().tanks()).hasSize(1);
    assertThat(LEASE.evidence().lease().tanks().get(0).diameter().toFeet()).isEqualTo(10);
    assertThat(setback(LEASE).clear().value().toFeet()).isCloseTo(195, within(1e-6));
    assertThat(setback(LEASE).to()).isEqualTo(LEASE.evidence().lease().tanks().get(0).id());
  }

  @Test
  void whatIsNotTypedIsNotCheckedAndSaidSo() {
    Finding found = LEASE.the("setback-not-typed");
    assertThat(found.severity()).isEqualTo(Severity.NOTE);
    assertThat(found.words()).contains("Dry Fork", "195 ft", "not checked");
    assertThat(LEASE.says("setback-short")).isFalse();
    assertThat(LEASE.with(SETBACK, "200 ft").says("setback-not-typed")).isFalse();
  }

  @Test
  void nearerThanTheSetbackIsFoundAndJustAtItIsNot() {
    assertThat(LEASE.with(SETBACK, "194.9 ft").says("setback-short")).isFalse();
    Looked atIt = LEASE.with(SETBACK, setback(LEASE).clear().value().toFeet(), "ft");
    assertThat(atIt.says("setback-short")).isFalse();
    Finding found = LEASE.with(SETBACK, "196 ft").the("setback-short");
    assertThat(found.severity()).isEqualTo(Severity.FIX);
    assertThat(found.words()).contains("195 ft", "196 ft", "Dry Fork");
  }

  @Test
  void whatStandsAlreadyIsOnlyLookedAt() {
    Finding found =
        LEASE.with(SETBACK, "300 ft").with("/tanks/0/status", "have").the("setback-short");
    assertThat(found.severity()).isEqualTo(Severity.LOOK);
  }

  /** What stands already may be nearest: the new tank behind it is still one to fix. */
  @Test
  void everyTankThatIsTooNearIsTold() {
    Looked two =
        TWO_TANKS
            .with(SETBACK, "300 ft")
            .with("/tanks/0/status", "have")
            .with("/tanks/1/status", "new")
            .with("/tanks/1/at", Map.of("east", "950 ft", "north", "1000 ft"));
    assertThat(two.all("setback-short"))
        .extracting(Finding::severity)
        .containsExactlyInAnyOrder(Severity.LOOK, Severity.FIX);
    assertThat(setback(two).clear().value().toFeet()).isCloseTo(195, within(1e-6));
  }

  /** A house covers the ground inside its corners: a tank in the middle of it is no way off. */
  @Test
  void aTankInsideAHouseStandsNoDistanceFromIt() {
    Looked house =
        LEASE
            .with("/landmarks/0/what", "house")
            .with(
                "/landmarks/0/corners",
                List.of(
                    Map.of("east", "900 ft", "north", "900 ft"),
                    Map.of("east", "1100 ft", "north", "900 ft"),
                    Map.of("east", "1000 ft", "north", "1300 ft")));
    assertThat(setback(house).clear().value().toFeet()).isZero();
    Looked creek = house.with("/landmarks/0/what", "creek");
    assertThat(setback(creek).clear().value().toFeet()).isGreaterThan(50);
  }

  @Test
  void aLandmarkThatGoesIsNoConcern() {
    Looked gone = LEASE.with("/landmarks/0/status", "remove");
    assertThat(gone.evidence().yard().setbacks()).isEmpty();
  }
}
