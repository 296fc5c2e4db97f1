package tankyard.engine.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.checks.Looked;
import tankyard.engine.units.Unit;

class OutlookTest {
  private static final Looked BASE = Looked.at("p5-prairie-flood");

  private static Outlook outlook(Looked looked) {
    return looked.evidence().outlook().orElseThrow();
  }

  private static double month(Looked looked, RunOut.Kind kind) {
    return outlook(looked).of(kind).orElseThrow().after().value().in(Unit.MONTH);
  }

  @Test
  void theFirstStandsFirst() {
    List<RunOut> rows = outlook(BASE).rows();
    assertThat(rows).hasSizeGreaterThan(5);
    assertThat(rows)
        .isSortedAccordingTo(Comparator.comparingDouble(r -> r.after().value().seconds()));
    assertThat(rows.get(0).already()).isTrue();
  }

  @Test
  void everyMonthIsWhatItsWorkingGives() {
    for (RunOut row : outlook(BASE).rows()) {
      assertThat(row.after().working().value())
          .as(row.words())
          .isCloseTo(row.after().value().in(Unit.MONTH), within(0.001));
    }
  }

  @Test
  void waterThatDoublesInHalfTheTimeHalvesEveryMonth() {
    Looked faster = BASE.with("/practice/waterDoubles", 12, "mo");
    for (RunOut row : outlook(BASE).rows()) {
      assertThat(month(faster, row.kind()))
          .as(row.words())
          .isCloseTo(row.after().value().in(Unit.MONTH) / 2, within(0.001));
    }
  }

  @Test
  void twiceTheWaterTodayBringsEveryMonthOneDoublingNearer() {
    Looked twice = BASE.withEach("/wells", "water", Looked.amount(60, "bbl/d"));
    for (RunOut.Kind kind :
        new RunOut.Kind[] {
          RunOut.Kind.PUMP_LONG_HOURS, RunOut.Kind.PUMP_FULL_TIME, RunOut.Kind.WELL_PRESSURE
        }) {
      assertThat(month(twice, kind)).isCloseTo(Math.max(0, month(BASE, kind) - 24), within(0.001));
    }
  }

  @Test
  void aLimitAFifthLowerIsReachedSooner() {
    Looked lower =
        BASE.with("/injectionWells/0/permitPressure", 0.8 * 315.117, "psi")
            .with("/injectionPumps/0/rate", 500, "bbl/d");
    // (252.09 - 120) / 0.25 = 528.4 bbl/d; 24 log2(528.4/420) = 7.95 months.
    assertThat(month(lower, RunOut.Kind.WELL_PRESSURE)).isCloseTo(7.95, within(0.01));
  }

  @Test
  void aDeeperWellLastsLonger() {
    Looked deeper = BASE.with("/injectionWells/0/depth", 1500, "ft");
    // 0.27402 x 1,500 = 411.0 psi; 1,164 bbl/d; 24 log2(1164/420) = 35.3 months.
    assertThat(month(deeper, RunOut.Kind.WELL_PRESSURE)).isCloseTo(35.3, within(0.05));
  }

  @Test
  void aCaseThatStandsForALaterDayDoesNotCountItsGrowthTwice() {
    Looked without = BASE.with("/cases/1", null);
    assertThat(month(without, RunOut.Kind.PUMP_FULL_TIME))
        .isCloseTo(month(BASE, RunOut.Kind.PUMP_FULL_TIME), within(1e-9));
    assertThat(month(without, RunOut.Kind.WINDOW))
        .isCloseTo(month(BASE, RunOut.Kind.WINDOW), within(0.01));
  }

  @Test
  void atTheMonthTheWindowClosesACaseWithThatWaterHasNoRoom() {
    double months = month(BASE, RunOut.Kind.WINDOW);
    double before = Math.pow(2, (months - 0.05) / 24);
    double after = Math.pow(2, (months + 0.05) / 24);
    assertThat(BASE.with("/cases/1/water", before).window().open()).isTrue();
    assertThat(BASE.with("/cases/1/water", after).window().open()).isFalse();
  }
}
