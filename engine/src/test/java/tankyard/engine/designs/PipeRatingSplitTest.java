package tankyard.engine.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.window.PressureLimit;

/** What eats a pipe's rating, height or line loss, counted over the whole way to the gauge. */
class PipeRatingSplitTest {
  private static PressureLimit rating(Design design, String line) {
    return design.window.allowed().stream()
        .filter(l -> l.kind() == PressureLimit.Kind.PIPE_RATING && l.thingId().equals(line))
        .findFirst()
        .orElseThrow();
  }

  private static double loss(CaseResult result, String line) {
    return result.line(line).orElseThrow().friction().value().toPsi();
  }

  @Test
  void coldWaxOnFlatGroundIsLineLossAndNotHeight() {
    Design blackWax = Design.of("p6-black-wax");
    PressureLimit most = blackWax.most();
    CaseResult there = blackWax.caseOf(most.caseId());
    assertThat(most.kind()).isEqualTo(PressureLimit.Kind.PIPE_RATING);
    // A few feet on, under ground, the pipe has more to bear than at the box.
    assertThat(most.friction().toPsi())
        .isCloseTo(loss(there, most.thingId()) + loss(there, "TR"), within(0.05));
    // The inlet is 4 ft above ground and the line 3 ft below it, the gauge 1 ft over the inlet.
    assertThat(most.lift().toPsi()).isBetween(0.4331 * 3, 0.4331 * 8);
    double rating = there.line(most.thingId()).flatMap(LineResult::rating).orElseThrow().toPsi();
    assertThat(most.gauge().value().toPsi())
        .isCloseTo(rating - most.lift().toPsi() - most.friction().toPsi(), within(0.01));
    assertThat(most.gauge().working().value())
        .isCloseTo(most.gauge().value().toPsi(), within(0.01));
  }

  @Test
  void fromAHollowOnlyTheLossFromThereOnCounts() {
    Map<String, Object> hollow =
        Map.of(
            "at",
            Map.of("east", Design.amount(875, "ft"), "north", Design.amount(535, "ft")),
            "ground",
            Design.amount(780, "ft"));
    Design design = Design.of("p1-osage-bend").with("/lines/3/route", List.of(hollow));
    PressureLimit limit = rating(design, "FL-W4");
    double whole = loss(design.caseOf(limit.caseId()), "FL-W4");
    // The peg is half way, the pipe of one bore.
    assertThat(limit.friction().toPsi()).isCloseTo(whole / 2, within(0.02 * whole));
    // Pipe in the hollow at 777 ft, inlet at 848 ft under 1 ft of oil.
    assertThat(limit.lift().toPsi())
        .isCloseTo(0.4331 * (1.0385 * (848 - 777) + 0.8448), within(0.1));
  }
}
