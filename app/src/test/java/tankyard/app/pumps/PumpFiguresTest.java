package tankyard.app.pumps;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;
import tankyard.app.figures.CaseTableModel;
import tankyard.app.figures.Figure;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;

class PumpFiguresTest {
  private final Desk desk = new Desk();
  private final CaseTableModel model =
      PumpsPanel.model(desk.selection, desk.view, desk.solve, desk.shown::add);

  private FigureSet pump() {
    return model.tableProperty().get().sets().get(0);
  }

  @Test
  void showsPressuresPowerAndHoursOfEachPump() {
    assertThat(pump().title()).isEqualTo("Injection pump 1");
    assertThat(pump().rows().stream().map(FigureRow::heading))
        .contains(
            "At the wellhead, psi",
            "At the pump, psi",
            "Power at the shaft, hp",
            "Runs a day, hours");
  }

  @Test
  void namesTheWell() {
    FigureRow into = pump().rows().get(pump().rows().size() - 1);
    assertThat(into.figures().stream().map(Figure::text)).containsOnly("Injection well 1");
  }

  @Test
  void aNumberLeadsToItsWorking() {
    Figure hours = pump().rows().get(1).figures().get(0);
    model.show(hours.working().orElseThrow().get());
    assertThat(desk.shown.get(0).title()).isEqualTo("Hours a day");
  }

  @Test
  void aHeadingPicksItsThing() {
    model.select(pump().thingId());
    assertThat(desk.selection.single()).contains("P1");
  }

  @Test
  void saysWhatToDoWhileThereIsNoPump() {
    Desk bare = new Desk(SmallLease.bare(), SmallAnswer::of);
    CaseTableModel empty = PumpsPanel.model(bare.selection, bare.view, bare.solve, bare.shown::add);
    assertThat(empty.emptyWordsProperty().get()).contains("Place an injection pump");
  }
}
