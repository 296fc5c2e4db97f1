package tankyard.engine.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.BermBuilder;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Length;

class TakeoffTest {
  private final Lease lease = SmallBattery.lease();

  @Test
  void pipeOfAllLinesComesOutOfTheSameRolls() {
    TakeoffLine flow = line(TakeoffKind.FLOW_LINE_PIPE, "poly-2");
    TakeoffLine leg = line(TakeoffKind.LEG_PIPE, "poly-2");
    assertThat(flow.drawn()).isCloseTo(2000, within(1e-6));
    assertThat(leg.drawn()).isCloseTo(60, within(1e-6));
    // 2,060 ft and 5 % are 2,163 ft: 5 rolls of 500 ft, the leg's own 63 ft and the rest.
    assertThat(leg.bought()).isCloseTo(63, within(1e-6));
    assertThat(flow.bought()).isCloseTo(2437, within(1e-6));
    assertThat(flow.boughtAs()).startsWith("5 rolls of 500 ft");
    assertThat(flow.causes()).containsExactly("FL1", "FL2", "FL3");
  }

  @Test
  void onlyBuriedLinesAreTrenched() {
    assertThat(line(TakeoffKind.TRENCH, "trench-foot").drawn()).isCloseTo(2000, within(1e-6));
  }

  @Test
  void aTeeGivesATeeAndOnEverySideAValveAndTwoEnds() {
    assertThat(by("tee-2", "T1")).isEqualTo(1);
    assertThat(by("ball-2", "T1")).isEqualTo(3);
    assertThat(by("transition-2", "T1")).isEqualTo(6);
  }

  @Test
  void everyNozzleGivesAUnionAndAValveAndNamesBothSides() {
    assertThat(by("union-2", "S1")).isEqualTo(2);
    assertThat(by("union-2", "OT1")).isEqualTo(1);
    Share share =
        line(TakeoffKind.FITTINGS, "union-2").shares().stream()
            .filter(s -> s.owner().equals("OT1"))
            .findFirst()
            .orElseThrow();
    assertThat(share.causes()).containsExactly("OT1", "OL");
  }

  @Test
  void wellsAndTheHeaderHaveCheckValves() {
    assertThat(by("check-2", "W1")).isEqualTo(1);
    assertThat(by("check-2", "W2")).isEqualTo(1);
    assertThat(by("check-2", "S1")).isEqualTo(1);
    assertThat(line(TakeoffKind.VALVES, "check-2").drawn()).isEqualTo(3);
  }

  @Test
  void aCheckValveCountedOnTheLineIsNotBoughtTwice() {
    Line line = lease.line("FL3").orElseThrow();
    Line counted = with(line, new FittingCount("check-2", 1));
    double checks =
        takeoff(lease.with(counted)).stream()
            .filter(l -> l.item().equals(Optional.of("check-2")))
            .mapToDouble(TakeoffLine::drawn)
            .sum();
    assertThat(checks).isEqualTo(3);
  }

  private static Line with(Line line, FittingCount fitting) {
    return LineBuilder.builder()
        .id(line.id())
        .name(line.name())
        .service(line.service())
        .from(line.from())
        .to(line.to())
        .route(line.route())
        .pipe(line.pipe())
        .length(line.length())
        .slack(line.slack())
        .depth(line.depth())
        .fittings(List.of(fitting))
        .fittingLength(line.fittingLength())
        .status(line.status())
        .build();
  }

  @Test
  void fittingsCountedOnALineAreBoughtInItsSizeAndAnExitIsOnlyALoss() {
    assertThat(by("elbow-90-poly-2", "FL3")).isEqualTo(2);
    assertThat(all()).noneMatch(l -> l.text().equals("Exit"));
  }

  @Test
  void rollsOfALineAreCoupled() {
    // 480 ft is one roll, 520 ft two, 1,000 ft two.
    assertThat(line(TakeoffKind.FITTINGS, "coupling-2").drawn()).isEqualTo(2);
  }

  @Test
  void aTankIsFoundByItsSizeAndBringsItsHatch() {
    assertThat(line(TakeoffKind.OIL_TANK, "tank-210").comesWith()).isFalse();
    assertThat(line(TakeoffKind.OIL_TANK, "thief-hatch").comesWith()).isTrue();
  }

  @Test
  void whatTheCatalogueHasNotIsListedInWords() {
    assertThat(all())
        .anySatisfy(
            line -> {
              assertThat(line.kind()).isEqualTo(TakeoffKind.DUMP_VALVE);
              assertThat(line.item()).isEmpty();
              assertThat(line.text()).isEqualTo("Lever dump valve, Cv 12");
            });
  }

  @Test
  void crewDaysAreWhole() {
    // 4 lines x 3 h + tee 3 + tank 4 + separator 8 = 27 h: 2.7 days.
    TakeoffLine crew = line(TakeoffKind.CREW, "crew-day");
    assertThat(crew.drawn()).isCloseTo(2.7, within(1e-9));
    assertThat(crew.bought()).isEqualTo(3);
  }

  @Test
  void whatIsThereIsListedAndCostsNothing() {
    List<TakeoffLine> lines = takeoff(SmallBattery.allThere());
    assertThat(lines)
        .isNotEmpty()
        .allMatch(l -> l.status() == Status.HAVE)
        .noneMatch(TakeoffLine::costs);
    assertThat(lines).noneMatch(l -> l.kind() == TakeoffKind.CREW);
    assertThat(lines).anyMatch(l -> l.item().equals(Optional.of("poly-2")));
  }

  @Test
  void aNewTankOnAnOldLineHasANewUnion() {
    Lease old = SmallBattery.allThere();
    Lease changed = old.with(old.thing("OT1").orElseThrow().withStatus(Status.NEW));
    TakeoffLine union =
        takeoff(changed).stream()
            .filter(l -> l.item().equals(Optional.of("union-2")) && l.status() == Status.NEW)
            .findFirst()
            .orElseThrow();
    assertThat(union.causes()).containsExactly("OT1", "OL");
  }

  @Test
  void whatGoesAwayIsTheWorkOfTakingItOut() {
    Lease changed =
        lease
            .with(lease.thing("OT1").orElseThrow().withStatus(Status.REMOVE))
            .with(lease.line("OL").orElseThrow().withStatus(Status.REMOVE));
    List<TakeoffLine> lines = takeoff(changed);
    assertThat(lines).noneMatch(l -> l.kind() == TakeoffKind.OIL_TANK);
    assertThat(lines.stream().filter(l -> l.status() == Status.REMOVE).map(TakeoffLine::text))
        .containsExactlyInAnyOrder("Taking out a tank", "Flushing and capping a line");
    assertThat(
            lines.stream().filter(l -> l.status() == Status.NEW).flatMap(l -> l.causes().stream()))
        .doesNotContain("OT1", "OL");
  }

  /**
   * By hand: the tank's 1178 ft3 stand 0.79 ft high on 1500 ft2, so 1 ft is built: 2 ft crest, 5 ft
   * foot, section 3.5 ft2, 2(50 + 30) + 5 pi = 175.7 ft round.
   */
  @Test
  void aBermOfNoHeightIsTakenAsHighAsItsTankAsks() {
    TakeoffLine dirt = dirt(Status.NEW, Optional.empty());
    assertThat(dirt.drawn()).isCloseTo(3.5 * (160 + 5 * Math.PI) / 27, within(1e-9));
    assertThat(dirt.bought()).isEqualTo(23);
    assertThat(dirt.causes()).containsExactly("BM1", "OT1");
    assertThat(dirt.status()).isEqualTo(Status.NEW);
  }

  @Test
  void aBermThatStandsIsThereAlready() {
    assertThat(dirt(Status.HAVE, Optional.of(Length.ofFeet(2))).status()).isEqualTo(Status.HAVE);
  }

  /**
   * By hand: 2 ft high, 2 ft crest, 8 ft foot, section 10 ft2, 2(50 + 30) + 8 pi = 185 ft round.
   */
  @Test
  void aBermOfAHeightIsCountedByIt() {
    assertThat(dirt(Status.NEW, Optional.of(Length.ofFeet(2))).drawn())
        .isCloseTo(10.0 * (160 + 8 * Math.PI) / 27, within(1e-9));
  }

  private TakeoffLine dirt(Status status, Optional<Length> height) {
    Berm berm =
        BermBuilder.builder()
            .id("BM1")
            .name("Berm")
            .corners(
                List.of(
                    MapPoint.ofFeet(1020, 280),
                    MapPoint.ofFeet(1070, 280),
                    MapPoint.ofFeet(1070, 310),
                    MapPoint.ofFeet(1020, 310)))
            .status(status)
            .height(height)
            .build();
    return takeoff(lease.with(berm)).stream()
        .filter(l -> l.kind() == TakeoffKind.PAD_AND_BERM && !l.comesWith())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyLineNamesDrawnThingsAndItsRule() {
    assertThat(all())
        .allSatisfy(
            line -> {
              assertThat(line.causes()).isNotEmpty();
              assertThat(line.causes())
                  .allMatch(id -> lease.thing(id).isPresent() || lease.line(id).isPresent());
              assertThat(line.rules()).isNotEmpty();
              assertThat(line.rules()).allMatch(rule -> !rule.source().citation().isBlank());
              assertThat(line.shares().stream().mapToDouble(Share::quantity).sum())
                  .isCloseTo(line.drawn(), within(1e-9));
            });
  }

  @Test
  void countsTheSameWithAnEmptyCatalogue() {
    List<TakeoffLine> bare = Takeoff.of(lease, Catalog.empty(), SmallBattery::metres);
    assertThat(bare).isNotEmpty().allMatch(l -> l.item().isEmpty());
    assertThat(bare.stream().filter(l -> l.measure() == Quote.Basis.FOOT)).isNotEmpty();
  }

  @Test
  void everyKindIsFoundByItsWord() {
    for (TakeoffKind kind : TakeoffKind.values()) {
      assertThat(TakeoffKind.find(kind.id())).contains(kind);
    }
  }

  private List<TakeoffLine> all() {
    return takeoff(lease);
  }

  private static List<TakeoffLine> takeoff(Lease lease) {
    return Takeoff.of(lease, SmallBattery.catalog(), SmallBattery::metres);
  }

  private TakeoffLine line(TakeoffKind kind, String item) {
    return all().stream()
        .filter(l -> l.kind() == kind && l.item().equals(Optional.of(item)))
        .findFirst()
        .orElseThrow();
  }

  /** How many of an item are charged to a thing. */
  private double by(String item, String owner) {
    return all().stream()
        .filter(l -> l.item().equals(Optional.of(item)))
        .flatMap(l -> l.shares().stream())
        .filter(s -> s.owner().equals(owner))
        .mapToDouble(Share::quantity)
        .sum();
  }
}
