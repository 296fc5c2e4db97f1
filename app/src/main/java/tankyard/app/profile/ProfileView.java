package tankyard.app.profile;

import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tankyard.app.figures.EmptyWords;
import tankyard.app.figures.FigureGrid;
import tankyard.app.figures.StaleMark;

/** A list of lines and the key above, the plot below. */
public final class ProfileView extends BorderPane {
  private final ProfileViewModel model;
  private final ComboBox<LineChoice> lines;
  private final FlowPane key = new FlowPane();
  private final StackPane plot = new StackPane();
  private boolean following;

  public ProfileView(ProfileViewModel model) {
    this.model = model;
    setId("profile");
    getStyleClass().addAll("panel", "profile");
    getStylesheets()
        .addAll(
            FigureGrid.stylesheet(),
            Objects.requireNonNull(getClass().getResource("profile.css")).toExternalForm());
    lines = new ComboBox<>(model.choices());
    lines.setId("profile-line");
    lines.setVisibleRowCount(16);
    lines.setTooltip(
        new Tooltip("The line whose profile is shown; picking one on the map does the same"));
    lines.valueProperty().addListener((o, was, is) -> choose(is));
    model.chosenProperty().addListener((o, was, is) -> follow());
    model.choices().addListener((javafx.collections.ListChangeListener<LineChoice>) c -> follow());
    key.getStyleClass().add("profile-key");
    HBox.setHgrow(key, Priority.ALWAYS);
    HBox head = new HBox(lines, key);
    head.getStyleClass().add("profile-head-line");
    EmptyWords empty = new EmptyWords(model.emptyWordsProperty());
    head.visibleProperty().bind(empty.visibleProperty().not());
    setTop(new VBox(new StaleMark(plot, model.freshness()), head));
    setCenter(new StackPane(plot, empty));
    model.pictureProperty().addListener((o, was, is) -> show(is));
    follow();
    show(model.pictureProperty().get());
  }

  private void choose(LineChoice choice) {
    if (!following) {
      model.choose(choice);
    }
  }

  private void follow() {
    following = true;
    lines.setValue(model.chosenProperty().get());
    following = false;
  }

  private void show(Optional<ProfilePicture> picture) {
    plot.getChildren().clear();
    key.getChildren().clear();
    picture.ifPresent(
        p -> {
          plot.getChildren().add(new ProfilePlot(p, model::readOut));
          key.getChildren()
              .addAll(item("key-ground", "ground"), item("key-pipe", "pipe, by its own length"));
          key.getChildren()
              .add(p.hasHead() ? item("key-head", p.headWords()) : new Label(p.headWords()));
          if (!p.partFull().isEmpty()) {
            key.getChildren().add(item("profile-part-full", "pipe runs part full"));
          }
        });
  }

  private static Node item(String style, String words) {
    Region swatch = new Region();
    swatch.getStyleClass().addAll("profile-swatch", style);
    HBox item = new HBox(swatch, new Label(words));
    item.getStyleClass().add("profile-key-item");
    return item;
  }
}
