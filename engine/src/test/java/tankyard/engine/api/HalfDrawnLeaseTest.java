package tankyard.engine.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Unknowns;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** However unfinished a drawing is, it is answered: with numbers, or with what is missing. */
class HalfDrawnLeaseTest {
  private static final Tankyard TANKYARD =
      new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 1, 1));

  private static Lease example(String name) throws IOException {
    return LeaseFiles.read(Path.of("..", "docs", "examples", name + ".lease.json"));
  }

  private static Lease empty() {
    return new Lease(
        "New lease",
        "",
        Site.unknown(),
        List.of(),
        Fluids.of(Gravity.ofApi(36), Gravity.of(1.06, tankyard.engine.units.Unit.SPECIFIC_GRAVITY)),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Practice.usual(),
        Prices.none(),
        List.of(),
        Unknowns.none());
  }

  @Test
  void anEmptyLeaseSaysWhatToDoFirst() {
    LeaseAnswer answer = TANKYARD.answer(empty());
    assertThat(answer.windows()).isEmpty();
    assertThat(answer.diagnoses())
        .extracting(Diagnosis::id)
        .contains("no-wells", "no-separator", "no-cases", "no-heights");
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek-two-210s"})
  void anythingMayBeTakenOutInAnyOrder(String name) throws IOException {
    Random random = new Random(20261125);
    for (int run = 0; run < 12; run++) {
      Lease lease = example(name);
      while (!ids(lease).isEmpty()) {
        List<String> ids = ids(lease);
        lease = lease.without(ids.get(random.nextInt(ids.size())));
        requireSense(TANKYARD.answer(lease));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"p1-osage-bend", "p2-sandstone-knob", "p3-coyote-creek-two-210s"})
  void thingsMayBeMovedAnywhereEvenOntoEachOther(String name) throws IOException {
    Random random = new Random(7);
    Lease lease = example(name);
    List<Thing> things = lease.things().toList();
    for (int run = 0; run < 60; run++) {
      Thing thing = things.get(random.nextInt(things.size()));
      Thing other = things.get(random.nextInt(things.size()));
      MapPoint place =
          run % 3 == 0
              ? lease.thing(other.id()).orElseThrow().at()
              : MapPoint.ofFeet(random.nextInt(4000) - 1000, random.nextInt(4000) - 1000);
      Thing moved = lease.thing(thing.id()).orElseThrow().movedTo(place);
      lease = lease.with(run % 2 == 0 ? moved.withGround(Optional.empty()) : moved);
      requireSense(TANKYARD.answer(lease));
    }
  }

  @Test
  void wellsThatMakeNothingAreAnswered() throws IOException {
    Lease idle =
        example("p1-osage-bend")
            .withEachWell(
                w ->
                    new tankyard.engine.lease.Well(
                        w.id(),
                        w.name(),
                        w.at(),
                        w.ground(),
                        w.status(),
                        LiquidRate.ofBarrelsPerDay(0),
                        LiquidRate.ofBarrelsPerDay(0),
                        w.gas(),
                        w.runsPerDay(),
                        w.surge(),
                        w.boxHeight(),
                        w.boxLimit(),
                        w.headTemperature(),
                        w.returnedWater(),
                        w.motor(),
                        w.motorAmps(),
                        w.wire()));
    LeaseAnswer answer = TANKYARD.answer(idle);
    requireSense(answer);
    assertThat(answer.windows().get(0).least()).isPresent();
  }

  @Test
  void aLineDrawnFromTheSeparatorToTheWellCarriesTheSame() throws IOException {
    Lease lease = example("p1-osage-bend");
    Line line = lease.line("FL-W3").orElseThrow();
    LeaseAnswer there = TANKYARD.answer(lease);
    LeaseAnswer back = TANKYARD.answer(lease.with(line.withEnds(line.to(), line.from())));
    assertThat(box(back, "W3")).isEqualTo(box(there, "W3"));
  }

  @Test
  void aSecondLineBesideTheFirstEasesTheWell() throws IOException {
    Lease lease = example("p3-coyote-creek");
    Line header = lease.line("FL-H1").orElseThrow();
    LeaseAnswer single = TANKYARD.answer(lease);
    LeaseAnswer doubled = TANKYARD.answer(lease.with(header.withId("FL-H2")));
    requireSense(doubled);
    assertThat(box(doubled, "W1")).isLessThan(box(single, "W1"));
  }

  @Test
  void whatIsTakenOutNoLongerCarries() throws IOException {
    Lease lease = example("p1-osage-bend");
    Line line = lease.line("FL-W3").orElseThrow();
    LeaseAnswer answer = TANKYARD.answer(lease.with(line.withStatus(Status.REMOVE)));
    assertThat(answer.diagnoses()).anySatisfy(d -> assertThat(d.thingId()).isEqualTo("W3"));
  }

  @Test
  void aPipeNoCatalogueListsIsNamed() throws IOException {
    Lease lease = example("p1-osage-bend");
    Line leg =
        lease.lines().stream()
            .filter(l -> l.service() == Service.WATER_LEG)
            .findFirst()
            .orElseThrow();
    LeaseAnswer answer = TANKYARD.answer(lease.with(leg.withPipe("no-such-pipe")));
    assertThat(answer.diagnoses())
        .anySatisfy(
            d -> {
              assertThat(d.id()).isEqualTo("pipe-unknown");
              assertThat(d.words()).contains("no-such-pipe");
            });
    requireSense(answer);
  }

  private static double box(LeaseAnswer answer, String well) {
    return answer.cases().get(0).well(well).orElseThrow().box().value().toPsi();
  }

  private static List<String> ids(Lease lease) {
    List<String> ids = new ArrayList<>(lease.things().map(Thing::id).toList());
    lease.lines().forEach(l -> ids.add(l.id()));
    return ids;
  }

  /** Finite numbers, and every working can be written. */
  private static void requireSense(LeaseAnswer answer) {
    for (CaseResult result : answer.cases()) {
      for (WellResult well : result.wells()) {
        assertThat(well.box().value().toPsi()).isFinite();
        assertThat(well.box().working().digits()).isNotBlank();
      }
      for (LineResult line : result.lines()) {
        assertThat(line.start().toPsi()).isFinite();
        assertThat(line.friction().value().toPsi()).isBetween(0.0, 1e6);
      }
    }
    for (Window window : answer.windows()) {
      for (PressureLimit limit : window.needed()) {
        assertThat(limit.gauge().working().value()).isFinite();
      }
    }
  }
}
