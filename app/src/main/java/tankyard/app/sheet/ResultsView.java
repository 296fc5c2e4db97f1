package tankyard.app.sheet;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tankyard.app.field.FormView;
import tankyard.app.figures.Columns;
import tankyard.app.figures.FigureGrid;
import tankyard.app.figures.StackedFigures;
import tankyard.app.sheet.SheetResults.Notice;
import tankyard.app.sheet.SheetResults.WorkedFact;

/** Findings in short, results by case with their workings, and what was assumed. */
final class ResultsView extends VBox {
  private final SheetViewModel model;

  ResultsView(SheetViewModel model) {
    this.model = model;
    setId("sheet-results");
    getStyleClass().add("sheet-results");
    model.resultsProperty().addListener((o, was, is) -> show(is));
    show(model.resultsProperty().get());
  }

  private void show(SheetResults results) {
    getChildren().clear();
    if (!results.notices().isEmpty()) {
      section("Findings");
      results.notices().forEach(n -> getChildren().add(notice(n)));
    }
    if (!results.isEmpty()) {
      section("Results");
      getChildren().add(facts(results.facts()));
      if (!results.table().sets().isEmpty()) {
        getChildren().add(table(results));
      }
    }
    if (!results.assumed().isEmpty()) {
      section("Assumed, since nobody said");
      results.assumed().forEach(words -> getChildren().add(line("–  " + words, "sheet-assumed")));
    }
  }

  private void section(String words) {
    getChildren().add(FormView.heading(words));
  }

  private static Label notice(Notice notice) {
    return line(notice.severity() + ":  " + notice.words(), "notice-" + notice.severity());
  }

  private GridPane facts(List<WorkedFact> facts) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("sheet-facts");
    ColumnConstraints label = new ColumnConstraints();
    label.setMinWidth(Region.USE_PREF_SIZE);
    ColumnConstraints text = new ColumnConstraints();
    text.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().addAll(label, text);
    for (int i = 0; i < facts.size(); i++) {
      WorkedFact fact = facts.get(i);
      Label name = line(fact.label(), "figure-label");
      name.setTooltip(new Tooltip(fact.why()));
      Hyperlink link = Columns.link(fact.text(), fact.working(), model::show);
      link.setWrapText(true);
      grid.addRow(i, name, link);
    }
    return grid;
  }

  private Node table(SheetResults results) {
    if (results.table().columns().size() >= StackedFigures.CASES) {
      StackedFigures stacked = new StackedFigures(results.table().columns(), model::show);
      results.table().sets().forEach(stacked::add);
      return stacked;
    }
    FigureGrid grid = new FigureGrid(results.table().columns(), model::show, model::select);
    results.table().sets().forEach(grid::add);
    return grid;
  }

  private static Label line(String words, String styleClass) {
    Label label = new Label(words);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
