package tankyard.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.designs.ExampleLease;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseBuilder;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.LiquidRate;

/** Lines that only one well's liquid can pass feel its stroke, a pair of them as well as one. */
class OwnLinesTest {
  private static final String PEAK = "x 3.0 for the stroke";

  /** The example with more lines, each a copy of one that goes from and to somewhere else. */
  private static CaseResult osageBend(Line... more) {
    return report(with(more));
  }

  private static Lease with(Line... more) {
    Lease lease = ExampleLease.of("p1-osage-bend");
    List<Line> lines = new ArrayList<>(lease.lines());
    lines.addAll(List.of(more));
    return LeaseBuilder.builder(lease).lines(lines).build();
  }

  private static CaseResult report(Lease lease) {
    CaseStudy study = new CaseStudy(Survey.of(lease, Catalog.empty()), lease.cases().get(0));
    return CaseReport.of(study, Map.of("S1", 9 * 6894.757));
  }

  private static Line like(String line, String id, String from, String to) {
    Line old =
        ExampleLease.of("p1-osage-bend").lines().stream()
            .filter(l -> l.id().equals(line))
            .findFirst()
            .orElseThrow();
    return LineBuilder.builder(old).id(id).name(id).from(from).to(to).build();
  }

  private static double rate(CaseResult result, String line) {
    return result.line(line).orElseThrow().flow().toBarrelsPerDay();
  }

  private static String words(CaseResult result, String line) {
    return result.line(line).orElseThrow().flowWords();
  }

  @Test
  void twoLikeLinesSideBySideCarryHalfTheStrokeEach() {
    CaseResult pair = osageBend(like("FL-W4", "beside", "W4", "S1"));
    assertThat(rate(osageBend(), "FL-W4")).isCloseTo(90, within(1e-6));
    assertThat(rate(pair, "FL-W4")).isCloseTo(45, within(1e-4));
    assertThat(rate(pair, "beside")).isCloseTo(45, within(1e-4));
    assertThat(words(pair, "beside")).contains(PEAK);
    assertThat(rate(pair, "FL-W3")).isCloseTo(90, within(1e-6));
  }

  @Test
  void aLoopTwoWellsComeIntoIsShared() {
    CaseResult loop = osageBend(like("FL-W1", "across", "W1", "W3"));
    for (String line : List.of("FL-W1", "FL-W3", "across")) {
      assertThat(words(loop, line)).isEqualTo("all its wells together");
    }
    assertThat(words(loop, "FL-W4")).contains(PEAK);
  }

  @Test
  void aWellBeyondALoopKeepsItsOwnLine() {
    Lease lease = ExampleLease.of("p6-black-wax");
    Line trunk = lease.lines().stream().filter(l -> l.id().equals("TR")).findFirst().orElseThrow();
    List<Line> lines = new ArrayList<>(lease.lines());
    lines.add(LineBuilder.builder(trunk).id("TR2").name("TR2").build());
    Lease then = LeaseBuilder.builder(lease).lines(lines).build();
    CaseStudy study = new CaseStudy(Survey.of(then, Catalog.empty()), then.cases().get(0));
    CaseResult result = CaseReport.of(study, Map.of());
    assertThat(words(result, "FL-W1")).contains("for the stroke");
    assertThat(words(result, "TR")).isEqualTo("all its wells together");
    assertThat(words(result, "TR2")).isEqualTo("all its wells together");
  }

  @Test
  void aDeadWellTakesNoStrokeFromItsNeighbour() {
    CaseResult alone = trunk(w -> w);
    CaseResult dead = trunk(w -> w.id().equals("W4") ? making(w, 0) : w);

    assertThat(rate(alone, "TR")).isCloseTo(60, within(1e-6));
    assertThat(alone.shared("TR")).isPresent();
    assertThat(rate(dead, "FL-W1")).isCloseTo(90, within(1e-6));
    assertThat(rate(dead, "TR")).isCloseTo(90, within(1e-6));
    assertThat(words(dead, "TR")).contains(PEAK);
    assertThat(dead.shared("TR")).isEmpty();
  }

  @Test
  void aDeadWellOnALoopLeavesItToTheOther() {
    Lease lease = with(like("FL-W1", "across", "W1", "W4"));
    CaseResult dead = report(lease.withEachWell(w -> w.id().equals("W4") ? making(w, 0) : w));

    assertThat(words(dead, "FL-W1")).contains(PEAK);
    assertThat(rate(dead, "FL-W1") + rate(dead, "across")).isCloseTo(90, within(1e-3));
  }

  /** Wells 1 and 4 come together on one trunk to the separator. */
  private static CaseResult trunk(UnaryOperator<Well> wells) {
    Lease lease = with(like("FL-W4", "TR", "W1", "S1"));
    List<Line> lines = new ArrayList<>();
    for (Line line : lease.lines()) {
      boolean joins = line.id().equals("FL-W1") || line.id().equals("FL-W4");
      lines.add(
          joins
              ? LineBuilder.builder(line).to("T").route(List.of()).build()
              : line.id().equals("TR")
                  ? LineBuilder.builder(line).from("T").route(List.of()).build()
                  : line);
    }
    Well one = (Well) lease.thing("W1").orElseThrow();
    Tee tee = new Tee("T", "T", MapPoint.ofFeet(500, 800), one.ground(), Status.NEW);
    List<Tee> tees = new ArrayList<>(lease.tees());
    tees.add(tee);
    return report(LeaseBuilder.builder(lease).lines(lines).tees(tees).build().withEachWell(wells));
  }

  private static Well making(Well well, double barrels) {
    LiquidRate rate = LiquidRate.ofBarrelsPerDay(barrels);
    return WellBuilder.builder(well).oil(rate).water(rate).build();
  }
}
