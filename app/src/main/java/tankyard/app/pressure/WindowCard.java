package tankyard.app.pressure;

import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tankyard.app.pressure.WindowPicture.Mark;
import tankyard.app.pressure.WindowPicture.Segment;
import tankyard.engine.working.Working;

/** One separator: its name, the verdict, the bar, the key, and what is not checked. */
final class WindowCard extends VBox {
  WindowCard(
      WindowPicture picture, Consumer<String> select, Consumer<Supplier<Working>> showWorking) {
    getStyleClass().add("window-card");
    getChildren().addAll(head(picture, select), new WindowBar(picture, select, showWorking));
    getChildren().add(key(picture));
    if (!picture.beyond().isEmpty()) {
      getChildren()
          .add(note("Past the end of the scale: " + String.join("; ", picture.beyond()) + "."));
    }
    if (!picture.notChecked().isEmpty()) {
      getChildren().add(notChecked(picture));
    }
  }

  private static Node head(WindowPicture picture, Consumer<String> select) {
    Hyperlink title = new Hyperlink(picture.title());
    title.getStyleClass().setAll("hyperlink", "window-title");
    title.setMinWidth(Region.USE_PREF_SIZE);
    title.setTooltip(new Tooltip("Show it on the map"));
    title.setOnAction(e -> select.accept(picture.separatorId()));
    Label state = new Label(stateWords(picture));
    state
        .getStyleClass()
        .addAll("state", "state-" + picture.state().name().toLowerCase(Locale.ROOT));
    state.setMinWidth(Region.USE_PREF_SIZE);
    Label verdict = new Label(picture.verdict());
    verdict.setId("verdict-" + picture.separatorId());
    verdict.setWrapText(true);
    HBox head = new HBox(title, state, verdict);
    head.getStyleClass().add("window-head");
    return head;
  }

  private static String stateWords(WindowPicture picture) {
    return switch (picture.state()) {
      case OPEN -> "✓ a setting works";
      case CLOSED -> "✕ no setting works";
      case INVALID -> "✕ not valid";
      case UNKNOWN -> "? not known";
    };
  }

  private static Node key(WindowPicture picture) {
    FlowPane key = new FlowPane();
    key.getStyleClass().add("window-key");
    for (Segment segment : picture.segments()) {
      String style = "bar-" + segment.part().name().toLowerCase(Locale.ROOT);
      key.getChildren().add(item(swatch(style), segment.part().words() + " " + segment.digits()));
    }
    picture.least().ifPresent(e -> key.getChildren().add(plain(picture.sum())));
    if (picture.isCrossed()) {
      key.getChildren().add(item(swatch("bar-short"), "short"));
    } else if (picture.least().isPresent() && picture.most().isPresent()) {
      String style = picture.state() == WindowPicture.State.OPEN ? "bar-open" : "bar-narrow";
      key.getChildren().add(item(swatch(style), "window"));
    }
    if (picture.most().isPresent()) {
      key.getChildren().add(item(swatch("bar-over"), "too much"));
    }
    if (picture.setting().filter(s -> s.atFlow() > s.value()).isPresent()) {
      key.getChildren().add(item(swatch("bar-build-up"), "regulator building up"));
    }
    for (Mark.Kind kind : new Mark.Kind[] {Mark.Kind.TANK_ALONE, Mark.Kind.OIL_LEG}) {
      if (picture.marks().stream().anyMatch(m -> m.kind() == kind)) {
        key.getChildren().add(item(FlagLabels.sign(kind), signWords(kind)));
      }
    }
    return key;
  }

  private static String signWords(Mark.Kind kind) {
    return kind == Mark.Kind.TANK_ALONE
        ? "looking at the tank alone, not at the hill"
        : "set below this, the regulator's screw does nothing";
  }

  private static Node swatch(String style) {
    Region swatch = new Region();
    swatch.getStyleClass().addAll("swatch", style);
    return swatch;
  }

  private static Node item(Node sign, String words) {
    HBox item = new HBox(sign, new Label(words));
    item.getStyleClass().add("key-item");
    return item;
  }

  private static Node plain(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("key-sum");
    return label;
  }

  private static Node notChecked(WindowPicture picture) {
    VBox box = new VBox();
    box.getStyleClass().add("not-checked");
    Label head = new Label("Not checked");
    head.getStyleClass().add("not-checked-head");
    box.getChildren().add(head);
    picture.notChecked().forEach(words -> box.getChildren().add(note("?  " + words)));
    return box;
  }

  private static Label note(String words) {
    Label note = new Label(words);
    note.getStyleClass().add("window-note");
    note.setWrapText(true);
    return note;
  }
}
