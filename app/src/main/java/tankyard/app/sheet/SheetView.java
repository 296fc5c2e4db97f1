package tankyard.app.sheet;

import java.util.List;
import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tankyard.app.field.FormAction;
import tankyard.app.field.FormView;
import tankyard.app.figures.FigureGrid;
import tankyard.app.figures.StaleMark;

/** Title, inputs, results; at the foot why the field that has the keyboard matters. */
public final class SheetView extends BorderPane {
  private static final String ANY_UNIT =
      "Fields take any unit: 0.3 mi, 12 psi, 5 ft 6 in. Enter takes it, Escape puts it back.";

  private final Label title = new Label();
  private final Label kind = new Label();
  private final VBox facts = new VBox();
  private final VBox inputs = new VBox();
  private final HBox actions = new HBox();
  private final Label hint = new Label();

  public SheetView(SheetViewModel model) {
    setId("sheet");
    getStyleClass().addAll("panel", "sheet");
    getStylesheets()
        .addAll(
            FormView.stylesheet(),
            FigureGrid.stylesheet(),
            Objects.requireNonNull(getClass().getResource("sheet.css")).toExternalForm());
    title.setId("sheet-title");
    ResultsView results = new ResultsView(model);
    VBox page =
        new VBox(facts, inputs, new StaleMark(results, model.freshness()), results, actions);
    page.getStyleClass().add("sheet-page");
    actions.getStyleClass().add("sheet-actions");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("panel-scroll");
    setTop(new VBox(head(), refusal(model)));
    setCenter(scroll);
    setBottom(hintLine());
    setMinWidth(280);
    setPrefWidth(360);
    model.headProperty().addListener((o, was, is) -> showHead(is));
    model
        .pageProperty()
        .addListener(
            (o, was, is) -> {
              showPage(is);
              scroll.setVvalue(0);
            });
    showHead(model.headProperty().get());
    showPage(model.pageProperty().get());
  }

  private VBox head() {
    title.getStyleClass().add("sheet-title");
    title.setWrapText(true);
    kind.getStyleClass().add("sheet-kind");
    VBox head = new VBox(title, kind);
    head.getStyleClass().add("sheet-head");
    return head;
  }

  private static Label refusal(SheetViewModel model) {
    Label refusal = new Label();
    refusal.setId("sheet-refusal");
    refusal.getStyleClass().add("sheet-refusal");
    refusal.setWrapText(true);
    refusal.setMaxWidth(Double.MAX_VALUE);
    refusal.textProperty().bind(model.refusalProperty());
    refusal.visibleProperty().bind(model.refusalProperty().isNotEmpty());
    refusal.managedProperty().bind(refusal.visibleProperty());
    return refusal;
  }

  private Label hintLine() {
    hint.setId("sheet-hint");
    hint.getStyleClass().add("sheet-hint");
    hint.setWrapText(true);
    hint.setMaxWidth(Double.MAX_VALUE);
    hint.setMinHeight(Region.USE_PREF_SIZE);
    return hint;
  }

  private void showHead(SheetHead head) {
    title.setText(head.title());
    kind.setText(head.kind());
    boolean repeats = head.title().equalsIgnoreCase(head.kind());
    kind.setVisible(!repeats);
    kind.setManaged(!repeats);
    facts.getChildren().setAll(head.facts().stream().map(SheetView::fact).toList());
  }

  private void showPage(SheetPage page) {
    FormView form = new FormView(page.form());
    hint.textProperty().unbind();
    hint.textProperty()
        .bind(
            Bindings.when(form.hintProperty().isEmpty())
                .then(ANY_UNIT)
                .otherwise(form.hintProperty()));
    inputs.getChildren().setAll(form);
    actions.getChildren().setAll(buttons(page.actions()));
  }

  private static List<javafx.scene.control.Button> buttons(List<FormAction> actions) {
    return actions.stream().map(FormView::button).toList();
  }

  private static Label fact(String words) {
    Label fact = new Label(words);
    fact.getStyleClass().add("sheet-fact");
    fact.setWrapText(true);
    fact.setMinHeight(Region.USE_PREF_SIZE);
    return fact;
  }
}
