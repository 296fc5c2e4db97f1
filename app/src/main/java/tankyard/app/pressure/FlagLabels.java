package tankyard.app.pressure;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Shape;
import tankyard.app.figures.Columns;
import tankyard.app.pressure.WindowPicture.End;
import tankyard.app.pressure.WindowPicture.Mark;
import tankyard.app.pressure.WindowPicture.SettingMark;
import tankyard.engine.working.Working;

/** The words on the bar: each number leads to its working, each name to its thing. */
final class FlagLabels {
  private final String unit;
  private final Consumer<String> select;
  private final Consumer<Supplier<Working>> showWorking;

  FlagLabels(String unit, Consumer<String> select, Consumer<Supplier<Working>> showWorking) {
    this.unit = unit;
    this.select = select;
    this.showWorking = showWorking;
  }

  Region end(String which, End end) {
    HBox first =
        row(
            words(which, "flag-strong"),
            number(end.digits() + " " + unit, end.working(), "flag-strong"),
            words(
                end.bandDigits().isEmpty() ? "" : "± " + end.bandDigits() + " " + unit,
                "flag-small"),
            words(end.caseName(), "flag-case"));
    VBox lines = new VBox(first, row(thing(end.name(), end.thingId())));
    lines.getStyleClass().add("flag");
    return lines;
  }

  Region setting(SettingMark setting) {
    VBox box =
        new VBox(row(words(setting.fits() ? "" : "✕", "flag-strong"), settingNumber(setting)));
    if (!setting.fits()) {
      box.getChildren().add(row(words("not in the window", "flag-bad")));
    }
    box.getStyleClass().add("flag");
    return box;
  }

  Region mark(Mark mark) {
    HBox row =
        row(
            thing(mark.name(), mark.thingId()),
            number(mark.digits(), mark.working(), "flag-small"));
    row.getStyleClass().add("flag");
    return row;
  }

  /** A sign for each kind of mark, so that shape and not only colour tells them apart. */
  static Node sign(Mark.Kind kind) {
    Shape sign =
        switch (kind) {
          case TANK_ALONE -> new Circle(5, 5, 4.5);
          case OIL_LEG -> new Polygon(0, 10, 5, 0, 10, 10);
          case LOWER, UPPER -> new Line(5, 0, 5, 10);
        };
    sign.getStyleClass().addAll("sign", "sign-" + kind.name().toLowerCase(java.util.Locale.ROOT));
    sign.setMouseTransparent(true);
    return sign;
  }

  /** Points down to where the gauge reads. */
  static Node settingSign() {
    Shape sign = new Polygon(0, 0, 10, 0, 5, 9);
    sign.getStyleClass().addAll("sign", "sign-setting");
    sign.setMouseTransparent(true);
    return sign;
  }

  private Hyperlink settingNumber(SettingMark setting) {
    return number(setting.words(), setting.working(), "flag-strong");
  }

  private Hyperlink number(String digits, Supplier<Working> working, String style) {
    Hyperlink link = Columns.link(digits, working, w -> showWorking.accept(() -> w));
    link.getStyleClass().add(style);
    return link;
  }

  private Hyperlink thing(String name, String thingId) {
    Hyperlink link = new Hyperlink(name);
    link.getStyleClass().setAll("hyperlink", "flag-thing");
    link.setTooltip(new Tooltip("Show it on the map"));
    link.setOnAction(e -> select.accept(thingId));
    return link;
  }

  private static Label words(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    return label;
  }

  private static HBox row(Node... nodes) {
    HBox row = new HBox();
    row.getStyleClass().add("flag-row");
    for (Node node : nodes) {
      boolean blank = node instanceof Label label && label.getText().isEmpty();
      if (!blank) {
        row.getChildren().add(node);
      }
    }
    return row;
  }
}
