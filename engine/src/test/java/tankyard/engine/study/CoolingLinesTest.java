package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.pipes.LineCooling;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;

/** Lines cool to the ground, and thicken as they do. */
class CoolingLinesTest {
  private static final Lease LEASE = ExampleLease.of("p6-black-wax");

  private static CaseStudy january(Lease lease) {
    return new CaseStudy(Survey.of(lease, Catalog.empty()), lease.cases().get(2));
  }

  private static Lease withHeadsAt(double fahrenheit) {
    return LEASE.withEachWell(
        w ->
            WellBuilder.builder(w)
                .headTemperature(Optional.of(Temperature.ofFahrenheit(fahrenheit)))
                .build());
  }

  private static LineRun run(CaseStudy study, String id) {
    return study.gatheringAt(Map.of()).runs().stream()
        .filter(r -> r.laid().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void withoutAWellsTemperatureEveryLineIsAsColdAsTheGroundBitForBit() {
    CaseStudy unknown =
        january(
            LEASE.withEachWell(
                w -> WellBuilder.builder(w).headTemperature(Optional.empty()).build()));
    CaseStudy cold = january(withHeadsAt(40));

    for (LineRun run : unknown.gatheringAt(Map.of()).runs()) {
      assertThat(run.fill().law()).isSameAs(run.laid().law());
      assertThat(run.march())
          .isEqualTo(run.laid().law().march(run.flow(), run.liquid().liquid(), run.downstreamPa()));
      assertThat(run(cold, run.laid().id()).march()).isEqualTo(run.march());
    }
  }

  @Test
  void pieceByPieceFrictionIsThatOfAThousandSlices() {
    CaseStudy study = january(LEASE);
    LineRun run = run(study, "FL-W1");

    assertThat(run.fill().pieces()).hasSizeBetween(3, 12);
    assertThat(run.march().frictionPascals())
        .isCloseTo(sliced(study, run), within(0.002 * sliced(study, run)));
  }

  /** The same line, the slow way: viscosity straight from the laws in slices of equal length. */
  private static double sliced(CaseStudy study, LineRun run) {
    int slices = 1000;
    double length = run.laid().law().lengthM();
    LineCooling cooling = run.fill().cooling().orElseThrow();
    double groundK = study.ground().kelvins();
    double whole = run.laid().law().friction(run.liquid().liquid()).drop(run.flow()).pascals();
    double atGround = run.liquid().viscosity().value().pascalSeconds();
    double sum = 0;
    for (int i = 0; i < slices; i++) {
      double kelvins =
          groundK + cooling.left(run.fill().startK() - groundK, (i + 0.5) / slices * length);
      double mu =
          study
              .survey()
              .fluids()
              .mixture(cut(), Temperature.of(kelvins, Unit.KELVIN))
              .viscosity()
              .value()
              .pascalSeconds();
      sum += whole * mu / atGround / slices; // laminar: friction follows the viscosity
    }
    return sum;
  }

  private static double cut() {
    return 3.33 / 8.33;
  }

  @Test
  void warmFluidsMixAtATeeByTheHeatTheyCarry() {
    CaseStudy study = january(LEASE);
    List<String> in = List.of("FL-W1", "FL-W2", "FL-W3");
    double mean =
        in.stream().mapToDouble(id -> run(study, id).fill().endK()).average().orElseThrow();

    // Three wells that make the same mix: the plain mean.
    assertThat(run(study, "TR").fill().startK()).isCloseTo(mean, within(1e-6));
  }

  @Test
  void fluidAtEightyFiveIsWithinFourDegreesOfTheGroundAfterAThousandFeet() {
    LineCooling trunk = run(january(LEASE), "TR").fill().cooling().orElseThrow();

    assertThat(trunk.left(45, Unit.FOOT.toSi(1000))).isBetween(3.0, 4.0);
  }

  @Test
  void aWarmerWellLosesLessAndNeverLessThanNothing() {
    double cold = run(january(withHeadsAt(40)), "FL-W1").march().frictionPascals();
    double warm = run(january(withHeadsAt(85)), "FL-W1").march().frictionPascals();
    double hot = run(january(withHeadsAt(120)), "FL-W1").march().frictionPascals();

    assertThat(warm).isLessThan(cold);
    assertThat(hot).isLessThan(warm).isPositive();
  }

  @Test
  void aLineDrawnTheOtherWayRoundIsAsWarm() {
    Lease turned = LEASE.with(LEASE.line("FL-W1").orElseThrow().withEnds("T1", "W1"));
    LineRun there = run(january(LEASE), "FL-W1");
    LineRun back = run(january(turned), "FL-W1");

    assertThat(back.fill().startK()).isCloseTo(there.fill().endK(), within(1e-9));
    assertThat(back.fill().endK()).isCloseTo(there.fill().startK(), within(1e-9));
    assertThat(back.march().frictionPascals())
        .isCloseTo(there.march().frictionPascals(), within(1e-3));
  }

  @Test
  void whatIsShownIsMarkedWithTheTemperatureThePipeIsRatedAt() {
    assertThat(run(january(LEASE), "FL-W1").fill().warmest().toFahrenheit())
        .isCloseTo(85, within(1e-9));
    assertThat(run(january(withHeadsAt(30)), "FL-W1").fill().warmest().toFahrenheit())
        .isCloseTo(40, within(0.9));
  }
}
