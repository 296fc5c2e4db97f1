package tankyard.engine.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tankyard.engine.study.WellResult;
import tankyard.engine.study.WellResultBuilder;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** What the rules share: words that can be told apart, the worst case, the regulator built up. */
class WordsAndWorstTest {
  private static Finding finding(String caseId) {
    return Finding.of("id", Severity.LOOK, "T", "words", Source.definition("test")).inCase(caseId);
  }

  private static WellResult box(double boxPsi) {
    return WellResultBuilder.builder()
        .wellId("W")
        .separatorId("S")
        .rate(LiquidRate.ofBarrelsPerDay(30))
        .box(CaseEdits.computed(Pressure.ofPsi(boxPsi)))
        .gauge(Pressure.ofPsi(9))
        .lift(Pressure.ofPsi(3))
        .friction(Pressure.ofPsi(1))
        .build();
  }

  @Test
  void aValueIsNeverPrintedAsItsLimit() {
    assertThat(Versus.of(443.7, 460, Unit.BARREL, 1)).isEqualTo(new Versus("443.7 bbl", "460 bbl"));
    assertThat(Versus.of(11.999, 12, Unit.HOUR, 1)).isEqualTo(new Versus("11.999 h", "12 h"));
    assertThat(Versus.of(12, 12, Unit.HOUR, 1)).isEqualTo(new Versus("12 h", "12 h"));
  }

  @Test
  void manyNamesAreCutShort() {
    assertThat(Several.named(List.of())).isEmpty();
    assertThat(Several.named(List.of("A"))).isEqualTo("A");
    assertThat(Several.named(List.of("A", "B"))).isEqualTo("A and B");
    assertThat(Several.named(List.of("A", "B", "C", "D", "E"))).isEqualTo("A, B, C, D and E");
    assertThat(Several.named(List.of("A", "B", "C", "D", "E", "F")))
        .isEqualTo("A, B, C, D and 2 more");
  }

  @Test
  void ofSeveralCasesTheWorstIsKeptAndTheFirstOfAlike() {
    Worst worst = new Worst();
    worst.add("T", 1, () -> finding("a"));
    worst.add("T", 2, () -> finding("b"));
    worst.add("T", 2, () -> finding("c"));

    assertThat(worst.findings()).extracting(f -> f.caseId().orElse("")).containsExactly("b");
  }

  @Test
  void theBuildUpReachesABoxUnlessACrestIsOnTheWay() {
    AtFullFlow builtUp = new AtFullFlow(Map.of("S", 1.5), 1.5);

    assertThat(builtUp.boxPsi(box(9 + 3 + 1))).isCloseTo(14.5, within(1e-9));
    assertThat(builtUp.boxPsi(box(20))).isEqualTo(20);
  }
}
