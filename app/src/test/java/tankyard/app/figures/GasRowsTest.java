package tankyard.app.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.example.GassyAnswer;
import tankyard.app.example.SmallAnswer;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.units.UnitSystem;

/** What gas adds to the sheets of lines and separators. */
class GasRowsTest {
  private static CaseFigures figures(LeaseAnswer answer) {
    return new CaseFigures(answer, answer.cases().get(0).designCase().id(), UnitSystem.FIELD);
  }

  @Test
  void aLineWithGasShowsHoldUpAndSpeeds() {
    List<FigureRow> rows = LineRows.of(figures(GassyAnswer.answer()), "FL-W1");

    assertThat(rows)
        .extracting(FigureRow::label)
        .contains(
            "Free gas", "Gas, of volume", "Hold-up", "Liquid alone", "Gas alone", "May wear above");
  }

  @Test
  void aLineWithoutGasSaysNothingOfIt() {
    assertThat(LineRows.of(figures(SmallAnswer.answer()), "L6"))
        .extracting(FigureRow::label)
        .contains("Friction")
        .doesNotContain("Free gas", "Hold-up");
  }

  @Test
  void aSeparatorWithGasShowsItsPartAndTheSectionThatPartsIt() {
    assertThat(new ResultRows(figures(GassyAnswer.answer())).separator("S1"))
        .extracting(FigureRow::label)
        .contains("Gas, of volume", "Gas section, bore");
    assertThat(new ResultRows(figures(SmallAnswer.answer())).separator("S1"))
        .extracting(FigureRow::label)
        .doesNotContain("Gas, of volume");
  }
}
