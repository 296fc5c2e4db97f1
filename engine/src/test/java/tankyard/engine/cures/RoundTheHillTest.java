package tankyard.engine.cures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.units.Elevation;

/** What a way round the hill could save at most. */
class RoundTheHillTest {
  private static final Tankyard TANKYARD =
      new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 5, 1));

  private static CureBook book(Lease lease) {
    return TANKYARD.cures(lease, Cancel.NEVER).get(0);
  }

  private static double least(Lease lease) {
    return TANKYARD.answer(lease).windows().get(0).least().orElseThrow().gauge().value().toPsi();
  }

  @Test
  void aWayRoundTheHillTellsWhatItCouldSaveAndWhatTheDetourCosts() {
    String round = roundTheHill(ExampleLease.of("p2-sandstone-knob-2in"));

    // By hand 16.6 over the crest and 3.3 with the tank alone in mind; this lease has no prices.
    assertThat(number(round, "instead of ([0-9.]+) psi")).isCloseTo(16.6, within(0.2));
    assertThat(number(round, "would be ([0-9.]+) psi")).isCloseTo(3.3, within(0.5));
    assertThat(round).contains("nobody priced");
    // By hand 2.56 psi on the first 1,000 ft.
    assertThat(number(round, "ask for ([0-9.]+) psi")).isCloseTo(0.256, within(0.05));
  }

  @Test
  void noWayRoundAsksForLessThanTheStartOfALegThatFalls() {
    Lease lease = ExampleLease.of("p2-sandstone-knob");
    Lease straight = lease.with(lease.line("WL1").orElseThrow().withRoute(List.of()));
    String round = roundTheHill(lease);

    // By hand, straight: interface 904 and start 903 ft, gauge 905: the leg starts
    // 1 ft of brine and 1 ft of oil below the gauge, -0.83 psi; valve 2.09; margin 1.
    assertThat(least(straight)).isCloseTo(-0.83 + 2.09 + 1, within(0.01));
    assertThat(number(round, "would be ([0-9.]+) psi")).isCloseTo(2.3, within(1e-9));
    assertThat(round).contains("2.3 psi (the start of Water leg) instead of");
    assertThat(number(round, "saves more than ([0-9.]+) psi"))
        .isBetween(least(lease) - least(straight), least(lease) - least(straight) + 0.1);
    assertThat(book(straight).others()).noneMatch(w -> w.startsWith("Another route"));
  }

  @Test
  void aSecondHillRemainsOnceRoundTheFirst() {
    Lease lease = ExampleLease.of("p2-sandstone-knob-2in");
    Lease two = twoHills();
    Lease first = lease.with(lease.line("WL1").orElseThrow().withRoute(List.of(peg(500, 925))));
    String round = roundTheHill(two);

    assertThat(round).contains("there remain the crest 500 ft out on Water leg with ");
    assertThat(number(round, "out on Water leg with ([0-9.]+) psi"))
        .isBetween(least(first), least(first) + 0.15);
    // The tank alone with the leg as long as it is, as with one hill.
    assertThat(number(round, "would be ([0-9.]+) psi")).isCloseTo(3.3, within(0.5));
  }

  @Test
  void theFindingTellsTheFloorOfATrenchAndOfAWayRound() {
    assertThat(hill(ExampleLease.of("p2-sandstone-knob")))
        .endsWith("down to 2.3 psi (the start of Water leg).");
    String two = hill(twoHills());
    assertThat(two)
        .contains(" (crest 500 ft out on Water leg); round every crest, down to ")
        .endsWith("psi (Water tank's inlet).");
    assertThat(number(two, "round every crest, down to ([0-9.]+) psi"))
        .isEqualTo(number(roundTheHill(twoHills()), "would be ([0-9.]+) psi"));
  }

  private static String hill(Lease lease) {
    return TANKYARD.answer(lease).findings().stream()
        .filter(f -> f.id().equals("crest-governs"))
        .flatMap(f -> f.wayOut().stream())
        .filter(w -> w.startsWith("Go round the hill"))
        .findFirst()
        .orElseThrow();
  }

  private static Lease twoHills() {
    Lease lease = ExampleLease.of("p2-sandstone-knob-2in");
    return lease.with(
        lease
            .line("WL1")
            .orElseThrow()
            .withRoute(List.of(peg(500, 925), peg(750, 900), peg(1000, 931), peg(1400, 905))));
  }

  private static RoutePoint peg(double eastFeet, double groundFeet) {
    return new RoutePoint(
        MapPoint.ofFeet(eastFeet, 0), Optional.of(Elevation.ofFeet(groundFeet)), Optional.empty());
  }

  private static String roundTheHill(Lease lease) {
    return book(lease).others().stream()
        .filter(w -> w.startsWith("Another route round the hill"))
        .findFirst()
        .orElseThrow();
  }

  private static double number(String words, String pattern) {
    return Double.parseDouble(words.replaceAll("(?s).*" + pattern + ".*", "$1"));
  }
}
