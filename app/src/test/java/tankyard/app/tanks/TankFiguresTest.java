package tankyard.app.tanks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;
import tankyard.app.figures.CaseTable;
import tankyard.app.figures.CaseTableModel;
import tankyard.app.figures.Figure;
import tankyard.app.figures.FigureColumn;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;
import tankyard.engine.units.UnitSystem;

class TankFiguresTest {
  private final Desk desk = new Desk();
  private final CaseTableModel model =
      TanksPanel.model(desk.selection, desk.view, desk.solve, desk.shown::add);

  private CaseTable table() {
    return model.tableProperty().get();
  }

  private FigureRow row(String set, String heading) {
    return table().sets().stream()
        .filter(s -> s.title().equals(set))
        .flatMap(s -> s.rows().stream())
        .filter(r -> r.heading().equals(heading))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> texts(FigureRow row) {
    return row.figures().stream().map(Figure::text).toList();
  }

  @Test
  void hasAColumnForEachCaseAndMarksTheCurrentOne() {
    desk.view.caseIdProperty().set("winter");
    assertThat(table().columns())
        .containsExactly(
            new FigureColumn("Today, summer", false), new FigureColumn("Today, winter", true));
  }

  @Test
  void tellsSeparatorsStorageAndOverflowsApart() {
    assertThat(table().sets().stream().map(FigureSet::title))
        .containsExactly(
            "Separator 1",
            "Oil tank 1",
            "Water tank 1",
            "Oil tank 1, high switch",
            "Overflow: Line 7");
  }

  @Test
  void showsMinutesOfWaterInEveryCase() {
    assertThat(texts(row("Separator 1", "Water stays, minutes"))).containsExactly("84.0", "62.2");
  }

  @Test
  void showsWhatAnOverflowPassesAgainstAllFluid() {
    assertThat(texts(row("Overflow: Line 7", "Passes by gravity, bbl/d")))
        .containsExactly("262", "262");
    assertThat(texts(row("Overflow: Line 7", "All fluid, bbl/d"))).containsExactly("81", "109");
  }

  @Test
  void followsTheUnits() {
    desk.view.unitsProperty().set(UnitSystem.METRIC);
    assertThat(texts(row("Oil tank 1", "Usable, m3"))).containsExactly("28.9", "28.9");
  }

  @Test
  void saysWhatToDoWhileNothingIsDrawn() {
    Desk bare = new Desk(SmallLease.bare(), SmallAnswer::of);
    CaseTableModel empty = TanksPanel.model(bare.selection, bare.view, bare.solve, bare.shown::add);
    assertThat(empty.emptyWordsProperty().get()).contains("Place a separator");
  }
}
