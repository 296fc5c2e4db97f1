package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;

/** Water brought back passes lines and separator again and again, and is no water made. */
class ReturnedWaterTest {
  private static final double BROUGHT_BACK = 10;

  private final CaseResult without = january(ExampleLease.of("p6-black-wax"));
  private final CaseResult with =
      january(
          ExampleLease.of("p6-black-wax")
              .withEachWell(
                  w ->
                      WellBuilder.builder(w)
                          .returnedWater(Optional.of(LiquidRate.ofBarrelsPerDay(BROUGHT_BACK)))
                          .build()));

  private static CaseResult january(Lease lease) {
    CaseStudy study = new CaseStudy(Survey.of(lease, Catalog.empty()), lease.cases().get(2));
    return CaseReport.of(study, Map.of());
  }

  @Test
  void itCountsInTheLinesAndTheSeparator() {
    assertThat(rate(with)).isCloseTo(rate(without) + 3 * BROUGHT_BACK, within(1e-6));
    assertThat(with.separators().get(0).water().toBarrelsPerDay())
        .isCloseTo(
            without.separators().get(0).water().toBarrelsPerDay() + 3 * BROUGHT_BACK, within(1e-6));
  }

  @Test
  void itCountsTwiceOverInTheDesignWaterOfTheLeg() {
    assertThat(designWater(with))
        .isCloseTo(designWater(without) + 2 * 3 * BROUGHT_BACK, within(1e-6));
  }

  @Test
  void itIsNoWaterForTheTanksToHold() {
    assertThat(with.storage().waterRate()).isEqualTo(without.storage().waterRate());
    assertThat(with.storage().oilRate()).isEqualTo(without.storage().oilRate());
  }

  @Test
  void itMakesTheWaterCarryTheOil() {
    assertThat(without.line("TR").orElseThrow().oilCarries()).isTrue();
    assertThat(with.line("TR").orElseThrow().oilCarries()).isFalse();
  }

  @Test
  void itNeverRestsSoASharedLineCarriesItBesideWhatRuns() {
    SharedLine half = sharedTrunk(12);
    assertThat(half.average().toBarrelsPerDay()).isCloseTo(24.99 + 30, within(1e-6));
    // Three wells at twice their day's rate, and the 30 bbl/d beside them.
    assertThat(half.allOn().toBarrelsPerDay()).isCloseTo(2 * 24.99 + 30, within(1e-6));
    // All three on an eighth of the time, so more than two on 12.5 %: 95 % takes all three.
    assertThat(half.atOnce().value().toBarrelsPerDay()).isCloseTo(2 * 24.99 + 30, within(1e-6));
    assertThat(half.atOnce().working().value()).isCloseTo(2 * 24.99 + 30, within(0.01));
  }

  @Test
  void atOnceAndStaggeredTimersLeaveItAlone() {
    // Each runs a twelfth of the day: none or one on 98 % of the time.
    SharedLine two = sharedTrunk(2);
    assertThat(two.atOnce().value().toBarrelsPerDay()).isCloseTo(12 * 8.33 + 30, within(1e-6));
    assertThat(two.staggered().orElseThrow().rate().toBarrelsPerDay())
        .isCloseTo(2 * 12 * 8.33 + 30, within(1e-6));
  }

  private static SharedLine sharedTrunk(double hours) {
    Lease timed =
        ExampleLease.of("p6-black-wax")
            .withEachWell(
                w ->
                    WellBuilder.builder(w)
                        .runsPerDay(Optional.of(Time.of(hours, Unit.HOUR)))
                        .returnedWater(Optional.of(LiquidRate.ofBarrelsPerDay(BROUGHT_BACK)))
                        .build());
    return january(timed).shared("TR").orElseThrow();
  }

  private static double rate(CaseResult result) {
    return result.line("TR").orElseThrow().flow().toBarrelsPerDay();
  }

  private static double designWater(CaseResult result) {
    return result.separators().get(0).designWater().value().toBarrelsPerDay();
  }
}
