package tankyard.app.figures;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import tankyard.engine.working.Working;

/** Draws sets of figures below one line of column headings. */
public final class FigureGrid extends GridPane {
  /** A case's name takes two lines rather than a wide column. */
  private static final double HEADING_WIDTH = 76;

  private final List<FigureColumn> columns;
  private final FigureCells cells;
  private final Consumer<String> select;
  private int next;

  /**
   * A grid with its headings.
   *
   * @param showWorking called with the working of a number that is clicked
   * @param select called with the id of a thing whose heading is clicked
   */
  public FigureGrid(
      List<FigureColumn> columns, Consumer<Working> showWorking, Consumer<String> select) {
    this.columns = List.copyOf(columns);
    this.cells = new FigureCells(this.columns, showWorking);
    this.select = select;
    getStyleClass().add("figure-grid");
    getStylesheets()
        .add(Objects.requireNonNull(FigureGrid.class.getResource("figures.css")).toExternalForm());
    layoutColumns();
    addHeadings();
  }

  /** Also for the panels that use this package's other parts. */
  public static String stylesheet() {
    return Objects.requireNonNull(FigureGrid.class.getResource("figures.css")).toExternalForm();
  }

  /** Adds rows; the first title stands in the line of headings. */
  public FigureGrid add(FigureSet set) {
    if (!set.title().isEmpty()) {
      Node title = title(set);
      boolean first = next == 1;
      add(title, 0, first ? 0 : next++, first ? 1 : columns.size() + 1, 1);
      GridPane.setValignment(title, VPos.BOTTOM);
    }
    set.rows().forEach(this::addRow);
    return this;
  }

  private void layoutColumns() {
    ColumnConstraints label = new ColumnConstraints();
    label.setHgrow(Priority.ALWAYS);
    label.setMinWidth(96);
    getColumnConstraints().add(label);
    for (int i = 0; i < columns.size(); i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setHalignment(HPos.RIGHT);
      column.setMinWidth(HEADING_WIDTH);
      getColumnConstraints().add(column);
    }
  }

  private void addHeadings() {
    for (int c = 0; c < columns.size(); c++) {
      Label heading = cells.heading(c);
      heading.setMaxWidth(HEADING_WIDTH);
      GridPane.setValignment(heading, VPos.BOTTOM);
      add(heading, c + 1, next);
    }
    next++;
  }

  private Node title(FigureSet set) {
    if (set.thingId().isEmpty()) {
      Label title = new Label(set.title());
      title.getStyleClass().add("figure-title");
      return title;
    }
    Hyperlink link = new Hyperlink(set.title());
    link.setId("figures-" + set.thingId());
    link.getStyleClass().setAll("hyperlink", "figure-title");
    link.setTooltip(new Tooltip("Show it on the map"));
    link.setOnAction(e -> select.accept(set.thingId()));
    return link;
  }

  private void addRow(FigureRow row) {
    add(FigureCells.label(row), 0, next);
    for (int c = 0; c < row.figures().size(); c++) {
      add(cells.cell(row, c), c + 1, next);
    }
    next++;
  }
}
