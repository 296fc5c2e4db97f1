package tankyard.app.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Working;

class FigureRowsTest {
  private record Result(Computed<Pressure> pressure, Optional<Computed<Time>> time) {}

  private static final Working WORKING =
      Working.of("Box pressure", "p", "1 + 1", Unit.PSI, Source.commonPractice("a sum"));

  private static Optional<Result> result(double psi, double hours) {
    return Optional.of(
        new Result(
            Computed.of(Pressure.ofPsi(psi), () -> WORKING),
            Optional.of(Computed.of(Time.ofHours(hours), () -> WORKING))));
  }

  @Test
  void allFiguresOfARowHaveTheSameDecimals() {
    FigureRows<Result> rows =
        new FigureRows<>(UnitSystem.FIELD, List.of(result(9.04, 1), result(17.26, 2)));
    rows.computed("Box", "", Result::pressure);
    FigureRow row = rows.rows().get(0);
    assertThat(row.heading()).isEqualTo("Box, psi");
    assertThat(row.figures().stream().map(Figure::text)).containsExactly("9.0", "17.3");
  }

  @Test
  void aFigureLeadsToItsWorking() {
    FigureRows<Result> rows = new FigureRows<>(UnitSystem.FIELD, List.of(result(9, 1)));
    rows.computed("Box", "", Result::pressure);
    Figure figure = rows.rows().get(0).figures().get(0);
    assertThat(figure.working().orElseThrow().get()).isSameAs(WORKING);
  }

  @Test
  void aCaseWithoutTheResultShowsADash() {
    FigureRows<Result> rows =
        new FigureRows<>(UnitSystem.FIELD, List.of(Optional.empty(), result(9, 0.5)));
    rows.maybeIn(Unit.MINUTE, "Time", "", Result::time);
    assertThat(rows.rows().get(0).figures().stream().map(Figure::text))
        .containsExactly("–", "30.0");
  }

  @Test
  void aRowThatNoCaseKnowsIsLeftOut() {
    FigureRows<Result> rows = new FigureRows<>(UnitSystem.FIELD, List.of(Optional.empty()));
    rows.maybe("Time", "", Result::time);
    assertThat(rows.rows()).isEmpty();
  }

  @Test
  void followsTheUnitSystem() {
    FigureRows<Result> rows = new FigureRows<>(UnitSystem.METRIC, List.of(result(10, 1)));
    rows.computed("Box", "", Result::pressure);
    assertThat(rows.rows().get(0).heading()).isEqualTo("Box, kPa");
    assertThat(rows.rows().get(0).figures().get(0).text()).isEqualTo("68.9");
  }
}
