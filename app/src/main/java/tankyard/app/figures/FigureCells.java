package tankyard.app.figures;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import tankyard.engine.working.Working;

/** The single cells of tables of figures. */
record FigureCells(List<FigureColumn> columns, Consumer<Working> showWorking) {

  Label heading(int column) {
    Label heading = new Label(columns.get(column).heading());
    heading.getStyleClass().add("figure-heading");
    if (columns.get(column).current()) {
      heading.getStyleClass().add("current-case");
    }
    heading.setWrapText(true);
    heading.setTextAlignment(TextAlignment.RIGHT);
    heading.setAlignment(Pos.BOTTOM_RIGHT);
    heading.setMinHeight(Region.USE_PREF_SIZE);
    return heading;
  }

  static Label label(FigureRow row) {
    Label label = new Label(row.heading());
    label.getStyleClass().add("figure-label");
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    if (!row.why().isEmpty()) {
      Tooltip why = new Tooltip(row.why());
      why.setWrapText(true);
      why.setMaxWidth(320);
      label.setTooltip(why);
    }
    return label;
  }

  Node cell(FigureRow row, int column) {
    Figure figure = row.figures().get(column);
    boolean current = column < columns.size() && columns.get(column).current();
    if (figure.working().isEmpty()) {
      Label plain = new Label(figure.text());
      plain.getStyleClass().addAll("figure", current ? "current-case" : "other-case");
      plain.setWrapText(row.unit().isEmpty());
      plain.setMinHeight(Region.USE_PREF_SIZE);
      plain.setTextAlignment(TextAlignment.RIGHT);
      return plain;
    }
    Hyperlink link = new Hyperlink(figure.text());
    link.getStyleClass().setAll("figure", "figure-link", current ? "current-case" : "other-case");
    link.setAccessibleText(
        row.heading() + ", " + columns.get(column).heading() + ": " + figure.text());
    link.setTooltip(new Tooltip("Show the working"));
    link.setOnAction(
        e -> {
          link.setVisited(false);
          showWorking.accept(figure.working().get().get());
        });
    return link;
  }
}
