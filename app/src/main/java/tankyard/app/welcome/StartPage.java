package tankyard.app.welcome;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A page over the map: what to start with, and what was worked on last. */
public final class StartPage extends StackPane {

  /** What the page's buttons do. */
  public record Ways(Runnable demo, Runnable blank, Runnable open, Consumer<Path> recent) {}

  private final Ways ways;
  private final VBox recentList = new VBox(4);
  private final Button demo = button("start-demo", "Open the demo lease", "accent");

  public StartPage(Ways ways, ObservableList<Path> recent) {
    this.ways = ways;
    setId("start-page");
    getStyleClass().add("ty-start");
    getChildren().add(card(recent));
    setVisible(false);
    managedProperty().bind(visibleProperty());
    setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            setVisible(false);
          }
        });
  }

  public void open() {
    setVisible(true);
    demo.requestFocus();
  }

  private VBox card(ObservableList<Path> recent) {
    Label title = new Label("Tankyard");
    title.getStyleClass().add("ty-start-title");
    Label words =
        new Label(
            "Lay out an oil lease from the wells to the injection well, and see at once what every"
                + " change does to the separator's back pressure, the stuffing boxes, the tanks and"
                + " the bill.");
    words.setWrapText(true);
    demo.setOnAction(e -> go(ways.demo()));
    Button blank = button("start-new", "Start an empty lease", "");
    blank.setOnAction(e -> go(ways.blank()));
    Button open = button("start-open", "Open a file\u2026", "");
    open.setOnAction(e -> go(ways.open()));
    Label head = new Label("WORKED ON LAST");
    head.getStyleClass().add("ty-heading");
    head.visibleProperty().bind(javafx.beans.binding.Bindings.isNotEmpty(recent));
    Label care =
        new Label("A planning aid, not an engineer's design: field-check heights and pressures.");
    care.getStyleClass().add("ty-note");
    care.setWrapText(true);
    fill(recent);
    recent.addListener((ListChangeListener<Path>) c -> fill(recent));
    HBox buttons = new HBox(8, demo, blank, open);
    VBox card = new VBox(16, title, words, buttons, head, recentList, care);
    card.getStyleClass().add("ty-start-card");
    card.setMaxSize(560, USE_PREF_SIZE);
    card.setAlignment(Pos.TOP_LEFT);
    return card;
  }

  private void fill(ObservableList<Path> recent) {
    recentList.getChildren().clear();
    for (Path file : recent) {
      Hyperlink link = new Hyperlink(file.getFileName().toString());
      link.setTooltip(new Tooltip(file.toString()));
      link.setOnAction(e -> go(() -> ways.recent().accept(file)));
      recentList.getChildren().add(link);
    }
  }

  private void go(Runnable way) {
    setVisible(false);
    way.run();
  }

  private static Button button(String id, String words, String style) {
    Button button = new Button(words);
    button.setId(id);
    if (!style.isEmpty()) {
      button.getStyleClass().add(style);
    }
    return button;
  }
}
