package tankyard.app.figures;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import tankyard.engine.working.Working;

/**
 * Figures of many cases in a narrow place: each row's label stands above its numbers, and the
 * columns share the whole width. Words that are the same in every case stand once.
 */
public final class StackedFigures extends GridPane {
  /** From so many cases on there is no room for labels beside the numbers. */
  public static final int CASES = 3;

  private final FigureCells cells;
  private int next = 1;

  public StackedFigures(List<FigureColumn> columns, Consumer<Working> showWorking) {
    cells = new FigureCells(List.copyOf(columns), showWorking);
    getStyleClass().addAll("figure-grid", "stacked");
    getStylesheets().add(FigureGrid.stylesheet());
    for (int c = 0; c < columns.size(); c++) {
      ColumnConstraints share = new ColumnConstraints();
      share.setPercentWidth(100.0 / columns.size());
      share.setHalignment(HPos.RIGHT);
      getColumnConstraints().add(share);
      Label heading = cells.heading(c);
      GridPane.setValignment(heading, VPos.BOTTOM);
      add(heading, c, 0);
    }
  }

  public StackedFigures add(FigureSet set) {
    set.rows().forEach(this::addRow);
    return this;
  }

  private void addRow(FigureRow row) {
    Label label = FigureCells.label(row);
    GridPane.setHalignment(label, HPos.LEFT);
    add(label, 0, next++, cells.columns().size(), 1);
    if (row.isSameWords()) {
      Node words = cells.cell(row, 0);
      GridPane.setHalignment(words, HPos.LEFT);
      add(words, 0, next, cells.columns().size(), 1);
    } else {
      for (int c = 0; c < row.figures().size(); c++) {
        add(cells.cell(row, c), c, next);
      }
    }
    next++;
  }
}
