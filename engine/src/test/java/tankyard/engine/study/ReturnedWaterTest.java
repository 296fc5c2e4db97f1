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

  private static double rate(CaseResult result) {
    return result.line("TR").orElseThrow().flow().toBarrelsPerDay();
  }

  private static double designWater(CaseResult result) {
    return result.separators().get(0).designWater().value().toBarrelsPerDay();
  }
}
