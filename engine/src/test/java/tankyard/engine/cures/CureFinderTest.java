package tankyard.engine.cures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.OwnPipe;
import tankyard.engine.units.Length;

/** A cure says what the lease would say if it were drawn. */
class CureFinderTest {
  private static final Tankyard TANKYARD =
      new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 5, 1));

  private static CureBook book(Lease lease) {
    return TANKYARD.cures(lease, Cancel.NEVER).get(0);
  }

  private static CureResult the(CureBook book, String id, String words) {
    List<CureResult> found =
        book.cures().stream().filter(c -> c.id().equals(id) && c.words().contains(words)).toList();
    assertThat(found).as(id + " in " + book.cures()).hasSize(1);
    return found.get(0);
  }

  private static double least(Lease lease) {
    return TANKYARD.answer(lease).windows().get(0).least().orElseThrow().gauge().value().toPsi();
  }

  @Test
  void aDeeperTrenchIsWorthWhatTheSameLeaseWithTheTrenchDrawnSays() {
    CureResult deeper = the(book(ExampleLease.of("p2-sandstone-knob")), "deeper-trench", "6 ft");

    assertThat(deeper.least().orElseThrow().toPsi())
        .isCloseTo(least(ExampleLease.of("p2-sandstone-knob-deeper")), within(1e-9));
    assertThat(deeper.gained().toPsi()).isCloseTo(2.8, within(0.1)); // by hand: 14.5 and 11.7
    assertThat(deeper.billing()).isEqualTo(CureResult.Billing.PART);
  }

  @Test
  void aBiggerLegIsWorthWhatTheSameLeaseInTheBiggerPipeSays() {
    CureResult bigger = the(book(ExampleLease.of("p2-sandstone-knob-2in")), "bigger-leg", "3-in");

    assertThat(bigger.least().orElseThrow().toPsi())
        .isCloseTo(least(ExampleLease.of("p2-sandstone-knob")), within(1e-9));
    assertThat(bigger.gained().toPsi()).isCloseTo(2.1, within(0.4)); // by hand: 16.6 and 14.5
  }

  @Test
  void aDumpValveOfTwiceTheCvSavesThreeQuartersOfWhatIsLostInIt() {
    Lease lease = ExampleLease.of("p2-sandstone-knob");
    double valve = TANKYARD.answer(lease).windows().get(0).least().orElseThrow().valve().toPsi();

    assertThat(the(book(lease), "bigger-dump-valve", "twice").gained().toPsi())
        .isCloseTo(0.75 * valve, within(1e-9));
  }

  @Test
  void aTankMovedToTheBatteryNoLongerFeelsTheHill() {
    CureResult moved = the(book(ExampleLease.of("p2-sandstone-knob")), "tank-at-battery", "moved");

    assertThat(moved.least().orElseThrow().toPsi()).isBetween(7.0, 9.0);
    assertThat(moved.care()).contains("not in the bill");
  }

  @Test
  void waterBroughtBackComesFirstOnTheWaxyLease() {
    CureBook book = book(ExampleLease.of("p6-black-wax"));
    CureResult water = the(book, "water-back", "small line");

    assertThat(book.toMend()).isPositive();
    assertThat(water.words()).startsWith("25 bbl/d").contains("70 % water");
    assertThat(water.toMend()).isZero();
    assertThat(book.cures().get(0).id()).startsWith("water-back");
    assertThat(water.gained().toPsi())
        .isGreaterThan(the(book, "bigger-flow-line", "3-in").gained().toPsi());
    assertThat(the(book, "bigger-flow-line", "3-in").toMend()).isPositive();
    assertThat(the(book, "bigger-flow-line", "4-in").toMend()).isZero();
  }

  @Test
  void whereWaterCarriesTheOilAlreadyNoneIsToBeBroughtBack() {
    assertThat(book(ExampleLease.of("p6-black-wax-water-return")).cures())
        .noneMatch(c -> c.id().startsWith("water-back"));
    assertThat(book(ExampleLease.of("p1-osage-bend")).cures())
        .noneMatch(c -> c.id().startsWith("water-back"));
  }

  @Test
  void theListRunsFromTheFewestFindingsLeft() {
    for (String name : List.of("p6-black-wax", "p6-black-wax-three-lines", "p2-sandstone-knob")) {
      List<Integer> left =
          book(ExampleLease.of(name)).cures().stream().map(CureResult::toMend).toList();
      assertThat(left).isSorted();
    }
  }

  @Test
  void aLegJustAsLongAsItMayBeAsksForJustTheSetting() {
    Lease lease = ExampleLease.of("p1-osage-bend");
    TankReach reach = book(lease).reaches().get(0);
    Length longest = reach.times().get(0).longest().orElseThrow();
    Lease stretched = lease.with(lease.line("WL1").orElseThrow().withLength(Optional.of(longest)));

    // Risers stand on top of the length in the trench, a few feet of pipe.
    assertThat(least(stretched)).isCloseTo(reach.setting().toPsi(), within(0.05));
  }

  @Test
  void aHigherRateReachesLessFarAndABiggerLegFarther() {
    List<TankReach> reaches = book(ExampleLease.of("p2-sandstone-knob-round-2in")).reaches();

    assertThat(reaches).hasSizeGreaterThan(1);
    for (TankReach reach : reaches) {
      assertThat(reach.times())
          .extracting(t -> t.longest().map(Length::toFeet).orElse(0.0))
          .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }
    assertThat(longest(reaches.get(1))).isGreaterThan(longest(reaches.get(0)));
    assertThat(reaches.get(0).crest()).isPresent();
  }

  @Test
  void aTankThatLiesLowPullsNothingHoweverNear() {
    Lease lease = ExampleLease.of("p2-sandstone-knob");
    Lease straight = lease.with(lease.line("WL1").orElseThrow().withRoute(List.of()));
    TankReach reach = book(straight).reaches().get(0);

    assertThat(reach.needs().get(0).gauge().toPsi()).isCloseTo(least(straight), within(1e-9));
    assertThat(reach.crest().orElseThrow()).startsWith("the start of Water leg");
  }

  private static double longest(TankReach reach) {
    return reach.times().get(0).longest().orElseThrow().toFeet();
  }

  @Test
  void theHandSumsSayWhetherAGunBarrelsWaterRunsToTheTank() {
    // By hand: 0.4331 (10 x 1.07 + 8 x 0.855) = 7.6 psi; weir 10 + 8 x 0.855 / 1.07 = 16.4 ft above
    // ground 900, and the crest lies at 928.5.
    List<String> hill = book(ExampleLease.of("p2-sandstone-knob")).others();
    assertThat(hill)
        .anyMatch(w -> w.contains("7.57 psi at its base") && w.contains("16.4 ft"))
        .anyMatch(w -> w.contains("13 ft short"))
        .anyMatch(w -> w.startsWith("A transfer pump") && w.contains("480 bbl/d"))
        .anyMatch(w -> w.startsWith("Another route"));
    assertThat(book(ExampleLease.of("p6-black-wax")).others())
        .anyMatch(w -> w.contains("runs to the tank by itself"))
        .noneMatch(w -> w.startsWith("Another route"));
  }

  @Test
  void aGunBarrelInPlaceOfTheSeparatorIsWorkedOutInPsiMoneyAndFindings() {
    String hill = instead("p2-sandstone-knob");
    assertThat(hill).contains("can't run at all").contains("the boxes feel at most");
    // Flat ground, 20 ft of mixture overhead: 0.4331 x 20 x 1.04 = 9.0 psi and the lift from the
    // lowest well, 7 ft below: 3.2 psi, and line loss.
    String flat = instead("p1-osage-bend");
    assertThat(flat).contains("Well 3").contains("with the gauge at its setting");
    double psi = Double.parseDouble(flat.replaceAll(".*feel at most ([0-9.]+) psi.*", "$1"));
    assertThat(psi).isCloseTo(0.4331 * 1.0385 * (20 + 7), within(0.4));
  }

  private static String instead(String example) {
    Lease lease = ExampleLease.of(example);
    OwnPipe steel =
        new OwnPipe(
            "steel-4",
            "4-in steel",
            Length.ofInches(4.026),
            Optional.of(Length.ofInches(4.5)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    List<OwnPipe> pipes = new ArrayList<>(lease.ownPipes());
    pipes.removeIf(p -> p.name().contains("steel"));
    pipes.add(steel);
    lease.ownPipes().stream()
        .filter(p -> lease.lines().stream().anyMatch(l -> l.pipe().equals(p.id())))
        .filter(p -> p.name().contains("steel"))
        .forEach(pipes::add);
    return book(lease.withOwnPipes(pipes)).others().stream()
        .filter(w -> w.contains("in place of"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLeaseWithoutACaseHasNoCures() {
    assertThat(TANKYARD.cures(ExampleLease.of("p1-osage-bend").withCases(List.of()), Cancel.NEVER))
        .isEmpty();
  }
}
