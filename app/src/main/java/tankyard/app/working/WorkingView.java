package tankyard.app.working;

import java.util.List;
import java.util.Objects;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** One working: title, result, formula, inputs, source, and links to where the inputs came from. */
public final class WorkingView extends BorderPane {
  private final WorkingViewModel model;
  private final VBox page = new VBox();
  private final FlowPane trail = new FlowPane();
  private final Button back = new Button("Back");

  public WorkingView(WorkingViewModel model) {
    this.model = model;
    getStyleClass().add("working");
    getStylesheets()
        .add(Objects.requireNonNull(getClass().getResource("working.css")).toExternalForm());
    page.getStyleClass().add("working-page");
    page.setId("working-page");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    trail.getStyleClass().add("working-trail");
    setTop(trail);
    setCenter(scroll);
    setBottom(buttons());
    model.trailProperty().addListener((o, was, is) -> show(is));
    show(model.trailProperty().get());
  }

  private Node buttons() {
    back.setId("working-back");
    back.setOnAction(e -> model.back());
    Button copy = new Button("Copy as text");
    copy.setId("working-copy");
    copy.setTooltip(new Tooltip("Puts the working and those behind it on the clipboard"));
    copy.setOnAction(e -> model.copy());
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox bar = new HBox(back, gap, copy);
    bar.getStyleClass().add("working-buttons");
    return bar;
  }

  private void show(List<Working> path) {
    back.setDisable(!model.canGoBack());
    trail.getChildren().clear();
    for (int i = 0; i < path.size() - 1; i++) {
      int position = i;
      Hyperlink step = new Hyperlink(path.get(i).title() + "  ›");
      step.setOnAction(e -> model.backTo(position));
      trail.getChildren().add(step);
    }
    trail.setVisible(path.size() > 1);
    trail.setManaged(path.size() > 1);
    page.getChildren().clear();
    model.current().ifPresent(this::fill);
  }

  private void fill(Working working) {
    Label title = styled(working.title(), "working-title");
    title.setId("working-title");
    Label result = styled(withUnit(working.digits(), working.unit().symbol()), "working-result");
    result.setId("working-result");
    page.getChildren().addAll(title, result, formula(working));
    if (!working.terms().isEmpty()) {
      page.getChildren().addAll(styled("With", "working-heading"), terms(working));
    }
    List<Working> others = WorkingViewModel.others(working);
    if (!others.isEmpty()) {
      page.getChildren().add(styled("Behind it", "working-heading"));
      others.forEach(w -> page.getChildren().add(link(w, w.title())));
    }
    page.getChildren()
        .addAll(
            styled("Source", "working-heading"),
            styled(working.source().citation(), "working-source"),
            styled(working.source().kind().words(), "working-kind"));
  }

  /** A text area, so that the formula can be marked and copied by itself. */
  private static TextArea formula(Working working) {
    TextArea formula = new TextArea(working.symbol() + " = " + working.formula());
    formula.setId("working-formula");
    formula.setEditable(false);
    formula.setWrapText(true);
    formula.setPrefRowCount(2 + working.formula().length() / 60);
    formula.getStyleClass().add("working-formula");
    formula.setAccessibleText("Formula");
    return formula;
  }

  private GridPane terms(Working working) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("working-terms");
    ColumnConstraints number = new ColumnConstraints();
    number.setHalignment(HPos.RIGHT);
    ColumnConstraints words = new ColumnConstraints();
    words.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints()
        .addAll(new ColumnConstraints(), number, new ColumnConstraints(), words);
    int row = 0;
    for (Term term : working.terms()) {
      Node name =
          WorkingViewModel.workingOf(working, term)
              .<Node>map(w -> link(w, term.name()))
              .orElseGet(() -> styled(term.name(), "working-name"));
      grid.addRow(
          row++,
          styled(term.symbol(), "working-symbol"),
          styled(term.digits(), "working-digits"),
          styled(term.unit().symbol(), "working-unit"),
          name);
    }
    return grid;
  }

  private Hyperlink link(Working inner, String words) {
    Hyperlink link = new Hyperlink(words);
    link.getStyleClass().add("working-link");
    link.setWrapText(true);
    link.setTooltip(new Tooltip("Show the working of " + words));
    link.setOnAction(e -> model.goInto(inner));
    return link;
  }

  private static Label styled(String words, String styleClass) {
    Label label = new Label(words);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  private static String withUnit(String digits, String symbol) {
    return symbol.isEmpty() ? digits : digits + " " + symbol;
  }
}
