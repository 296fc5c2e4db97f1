package tankyard.app.sums;

import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tankyard.app.field.Form;
import tankyard.app.field.FormView;
import tankyard.app.figures.Columns;
import tankyard.app.figures.FigureGrid;
import tankyard.engine.quick.QuickSum;

/** The sums on the left, the values of the picked one in the middle, its answer on the right. */
public final class SumsView extends BorderPane {
  private static final String CLOSING =
      "Planning aid, not an engineer's design; field-check heights and pressures.";

  private final SumsViewModel model;
  private final VBox page = new VBox();
  private final VBox answer = new VBox();
  private final Label hint = new Label();

  public SumsView(SumsViewModel model) {
    this.model = model;
    setId("sums");
    getStyleClass().addAll("panel", "sums");
    getStylesheets()
        .addAll(
            FormView.stylesheet(),
            FigureGrid.stylesheet(),
            Objects.requireNonNull(getClass().getResource("sums.css")).toExternalForm());
    page.getStyleClass().add("sums-page");
    answer.getStyleClass().add("sums-answer");
    answer.setId("sums-answer");
    SplitPane split = new SplitPane(list(), scrolling(page), scrolling(answer));
    split.setDividerPositions(0.36, 0.71);
    hint.getStyleClass().add("sums-hint");
    hint.setWrapText(true);
    hint.setMaxWidth(Double.MAX_VALUE);
    setCenter(split);
    setBottom(hint);
    model.formProperty().addListener((o, was, is) -> showForm(is));
    model.answerProperty().addListener((o, was, is) -> showAnswer(is));
    showForm(model.formProperty().get());
    showAnswer(model.answerProperty().get());
  }

  private ListView<QuickSum> list() {
    ListView<QuickSum> list = new ListView<>();
    list.setId("sums-list");
    list.getItems().setAll(model.sums());
    list.setCellFactory(
        l ->
            new ListCell<>() {
              {
                setWrapText(true);
                setPrefWidth(0); // as wide as the list
              }

              @Override
              protected void updateItem(QuickSum sum, boolean empty) {
                super.updateItem(sum, empty);
                setText(empty || sum == null ? null : sum.title());
              }
            });
    list.getSelectionModel().select(model.pickedProperty().get());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.pickedProperty().set(is);
              }
            });
    return list;
  }

  private void showForm(Form<TypedSum> form) {
    QuickSum sum = model.pickedProperty().get();
    FormView fields = new FormView(form);
    hint.textProperty().unbind();
    hint.textProperty()
        .bind(
            Bindings.when(fields.hintProperty().isEmpty())
                .then(CLOSING)
                .otherwise(fields.hintProperty()));
    page.getChildren()
        .setAll(styled(sum.title(), "sums-title"), styled(sum.about(), "sums-about"), fields);
    page.getChildren().add(buttons());
  }

  private Node buttons() {
    Button example = button("sums-example", "Try its example", "Types an example of every value");
    example.setOnAction(e -> model.fillExample());
    Button clear = button("sums-clear", "Clear", "Back to nothing typed");
    clear.setOnAction(e -> model.clear());
    HBox bar = new HBox(example, clear);
    bar.getStyleClass().add("sums-buttons");
    return bar;
  }

  private void showAnswer(SumAnswer now) {
    answer.getChildren().clear();
    if (!now.message().isEmpty()) {
      answer.getChildren().add(styled(now.message(), "sums-message"));
      return;
    }
    GridPane grid = new GridPane();
    grid.getStyleClass().add("sums-numbers");
    ColumnConstraints title = new ColumnConstraints();
    title.setHgrow(Priority.ALWAYS);
    ColumnConstraints value = new ColumnConstraints();
    value.setHalignment(HPos.RIGHT);
    value.setMinWidth(Region.USE_PREF_SIZE);
    grid.getColumnConstraints().addAll(title, value);
    for (int i = 0; i < now.numbers().size(); i++) {
      SumAnswer.Number number = now.numbers().get(i);
      Hyperlink link = Columns.link(number.text(), number.working(), model::show);
      link.getStyleClass().add(i == 0 ? "sums-chief" : "sums-other");
      link.setMinWidth(Region.USE_PREF_SIZE);
      grid.addRow(i, styled(number.title(), i == 0 ? "sums-chief-title" : "figure-label"), link);
    }
    answer.getChildren().add(grid);
    now.cautions().forEach(c -> answer.getChildren().add(styled("!  " + c, "sums-caution")));
  }

  private static Button button(String id, String words, String why) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().add("small");
    button.setTooltip(new Tooltip(why));
    return button;
  }

  private static ScrollPane scrolling(Region content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("panel-scroll");
    return scroll;
  }

  private static Label styled(String words, String style) {
    Label label = new Label(words);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
