package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.pricing.BillLine;
import tankyard.engine.study.CaseCaution;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

class DemoLeaseTest {
  private static final String NAME = "demo.lease.json";

  private final Tankyard tankyard = Tankyard.with(Catalogs.find(), LocalDate.of(2026, 11, 25));
  private final Catalog catalog = tankyard.catalog();
  private final Lease lease = read();

  private static Lease read() {
    try (InputStream in = Catalogs.find().demoLease().orElseThrow()) {
      return LeaseFiles.read(NAME, in);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void saysThatItIsInvented() {
    assertThat(lease.note()).startsWith("An invented lease").contains("nobody's data");
  }

  @Test
  void hasTheThingsOfAnOrdinaryLease() {
    assertThat(lease.wells()).hasSizeGreaterThanOrEqualTo(10);
    assertThat(lease.tees()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(lease.tanks().stream().filter(t -> t.status().stays()))
        .extracting(Tank::duty)
        .containsExactlyInAnyOrder(Tank.Duty.OIL, Tank.Duty.OIL, Tank.Duty.WATER);
    assertThat(lease.injectionPumps()).hasSize(1);
    assertThat(lease.injectionWells()).hasSize(1);
    assertThat(lease.cases()).hasSize(4);
  }

  @Test
  void everythingStandsOnTheSpotHeightsSoThatItCanBeMoved() {
    assertThat(lease.spotHeights()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(lease.things()).allMatch(t -> t.ground().isEmpty());
    assertThat(lease.lines().stream().flatMap(l -> l.route().stream()))
        .allMatch(p -> p.ground().isEmpty());
  }

  @Test
  void isWrittenJustAsItWasRead() throws Exception {
    try (InputStream in = Catalogs.find().demoLease().orElseThrow()) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(new String(LeaseFiles.write(lease), StandardCharsets.UTF_8)).isEqualTo(text);
    }
  }

  @Test
  void isDrawnWithWhatTheCatalogueHas() {
    for (Line line : lease.lines()) {
      assertThat(catalog.pipe(line.pipe())).as(line.pipe()).isPresent();
      assertThat(line.fittings())
          .allSatisfy(f -> assertThat(catalog.loss(f.fitting())).as(f.fitting()).isPresent());
    }
    for (Tank tank : lease.tanks()) {
      TankSize size = catalog.item(tank.model().orElseThrow(), TankSize.class).orElseThrow();
      assertThat(tank.diameter()).isEqualTo(size.diameter());
      assertThat(tank.shellHeight()).isEqualTo(size.shellHeight());
      assertThat(tank.overflowHeight()).isEqualTo(size.overflowHeight());
    }
    Separator s = lease.separators().get(0);
    SeparatorSize size = catalog.item(s.model().orElseThrow(), SeparatorSize.class).orElseThrow();
    assertThat(s.diameter()).isEqualTo(size.diameter());
    assertThat(s.length()).isEqualTo(size.length());
    ValveType dump =
        catalog.item(s.dumpValve().model().orElseThrow(), ValveType.class).orElseThrow();
    assertThat(dump.cv()).contains(s.dumpValve().cv());
    assertThat(dump.port()).isEqualTo(s.dumpValve().port());
  }

  @Test
  void canBeWorkedOutWholly() {
    LeaseAnswer answer = tankyard.answer(lease);
    assertThat(answer.diagnoses()).isEmpty();
    assertThat(answer.cases()).hasSize(4);
    assertThat(answer.findings()).noneMatch(f -> f.severity() == Severity.STOP);
  }

  @Test
  void whatTheLinesMustBeReadWithCareForIsToldOnceForEachKind() {
    LeaseAnswer answer = tankyard.answer(lease);

    assertThat(answer.findings()).filteredOn(f -> f.id().equals("flow-in-transition")).hasSize(1);
    assertThat(answer.findings())
        .filteredOn(f -> f.id().equals("fittings-in-laminar-flow"))
        .hasSize(1);
    assertThat(answer.findings())
        .filteredOn(f -> f.id().equals("pipe-heat-unknown"))
        .singleElement()
        .satisfies(f -> assertThat(f.words()).contains("more:"));
    // The injection line carries no well's own fluid, and steel stands the heat.
    assertThat(answer.cases().get(0).cautions())
        .filteredOn(c -> c.id().equals("pipe-heat-unknown"))
        .flatExtracting(CaseCaution::things)
        .isNotEmpty()
        .allSatisfy(
            id ->
                assertThat(
                        catalog.pipe(lease.line(id).orElseThrow().pipe()).orElseThrow().material())
                    .isNotEqualTo(Material.STEEL));
  }

  @Test
  void aCrestGovernsTheLeastAndAStuffingBoxTheMost() {
    Window window = window(lease);
    assertThat(window.open()).isTrue();
    assertThat(window.least().orElseThrow().kind()).isEqualTo(PressureLimit.Kind.CREST);
    assertThat(window.least().orElseThrow().thingId()).isEqualTo("WL1");
    assertThat(window.most().orElseThrow().kind()).isEqualTo(PressureLimit.Kind.STUFFING_BOX);
    assertThat(window.recommended().orElseThrow().fits()).isTrue();
    assertThat(window.oilLeg().orElseThrow().regulatorRules()).isTrue();
  }

  @Test
  void goingThroughTheSaddleTakesMoreThanThreePsiOffTheLeast() {
    Line leg = waterLeg();
    Line round = leg.withRoute(List.of(RoutePoint.at(MapPoint.ofFeet(2700, 2090))));
    assertThat(least(lease.with(round))).isLessThan(least(lease) - 3);
  }

  @Test
  void movingTheTankSouthAlongTheRidgeRaisesLeastAndPrice() {
    Lease moved = lease.with(lease.thing("WT1").orElseThrow().movedTo(MapPoint.ofFeet(3420, 900)));
    assertThat(least(moved)).isGreaterThan(least(lease) + 0.5);
    assertThat(tankyard.answer(moved).bill().totals().total())
        .isGreaterThan(tankyard.answer(lease).bill().totals().total());
  }

  @Test
  void aTwoInchLegClosesTheWindow() {
    assertThat(window(lease.with(waterLeg().withPipe("pe4710-dr11-2"))).open()).isFalse();
  }

  @Test
  void everyLineIsPricedAndEveryPriceIsInvented() {
    LeaseAnswer answer = tankyard.answer(lease);
    assertThat(answer.bill().totals().unpriced()).isZero();
    assertThat(answer.bill().totals().stale()).isZero();
    assertThat(answer.bill().notUsed()).isEmpty();
    assertThat(answer.bill().lines().stream().filter(l -> l.state() == BillLine.State.PRICED))
        .isNotEmpty()
        .allMatch(BillLine::invented);
    assertThat(answer.bill().totals().working().value())
        .isCloseTo(answer.bill().totals().total().doubleValue(), within(0.2));
  }

  private Line waterLeg() {
    return lease.line("WL1").orElseThrow();
  }

  private Window window(Lease of) {
    return tankyard.answer(of).windows().get(0);
  }

  private double least(Lease of) {
    return window(of).least().orElseThrow().gauge().value().toPsi();
  }
}
