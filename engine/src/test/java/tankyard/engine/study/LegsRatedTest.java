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
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.Temperature;

/** Legs are rated as warm as what comes into their vessel, not as what leaves the wells. */
class LegsRatedTest {
  private static final Lease HOT =
      ExampleLease.of("p1-osage-bend")
          .withEachWell(
              w ->
                  WellBuilder.builder(w)
                      .headTemperature(Optional.of(Temperature.ofFahrenheit(145)))
                      .build());

  private static CaseResult result(Lease lease) {
    CaseStudy study = new CaseStudy(Survey.of(lease, Catalog.empty()), lease.cases().get(0));
    return CaseReport.of(study, Map.of("S1", 9 * 6894.757));
  }

  private static List<LineResult> lines(CaseResult result, Service service) {
    return result.lines().stream().filter(l -> l.service() == service).toList();
  }

  @Test
  void linesFromHotWellsCoolBeforeTheyMeetTheSeparator() {
    CaseResult result = result(HOT);
    // All four lines of this lease end at the separator: each cools by exp(-length / cools in).
    double byHand =
        lines(result, Service.FLOW_LINE).stream()
            .mapToDouble(LegsRatedTest::whereItEnds)
            .max()
            .orElseThrow();
    double warmest =
        lines(result, Service.FLOW_LINE).stream()
            .mapToDouble(l -> l.temperatures().end().toFahrenheit())
            .max()
            .orElseThrow();

    // Risers stand on top of the length in the trench: a few feet more to cool in.
    assertThat(warmest).isBetween(byHand - 1, byHand).isBetween(100.0, 120.0);
    for (Service leg : List.of(Service.WATER_LEG, Service.OIL_LEG)) {
      assertThat(lines(result, leg))
          .isNotEmpty()
          .allSatisfy(
              l ->
                  assertThat(l.temperatures().rated().toFahrenheit())
                      .isCloseTo(warmest, within(1e-9)));
    }
    assertThat(lines(result, Service.FLOW_LINE))
        .allSatisfy(
            l -> assertThat(l.temperatures().rated().toFahrenheit()).isCloseTo(145, within(1e-9)));
  }

  private static double whereItEnds(LineResult line) {
    LineTemperatures warm = line.temperatures();
    double ground = warm.ground().toFahrenheit();
    double over = line.length().toFeet() / warm.coolingLength().orElseThrow().value().toFeet();
    return ground + (145 - ground) * Math.exp(-over);
  }

  @Test
  void aLineDrawnFromTheSeparatorToItsWellCountsByTheEndAtTheSeparator() {
    Lease turned = HOT;
    for (Line line : HOT.lines()) {
      if (line.service() == Service.FLOW_LINE) {
        turned =
            turned.with(
                LineBuilder.builder(line)
                    .from(line.to())
                    .to(line.from())
                    .route(reversed(line.route()))
                    .build());
      }
    }
    double asDrawn = rated(result(HOT));
    assertThat(rated(result(turned))).isCloseTo(asDrawn, within(1e-6));
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> turned = new java.util.ArrayList<>(list);
    java.util.Collections.reverse(turned);
    return turned;
  }

  private static double rated(CaseResult result) {
    return lines(result, Service.WATER_LEG).get(0).temperatures().rated().toFahrenheit();
  }
}
