package tankyard.app.field;

import javafx.css.PseudoClass;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.util.Duration;

/** Says of a control what it is for and what is wrong with it, to eyes and to screen readers. */
final class Describe {
  private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
  private static final Duration SOON = Duration.millis(400);

  private Describe() {}

  static void control(Control control, Entry<?> entry) {
    control.setAccessibleText(entry.label());
    control.setAccessibleHelp(entry.why());
    control.setTooltip(tooltip(entry.why()));
    control.pseudoClassStateChanged(WRONG, !entry.error().isEmpty());
    entry
        .errorProperty()
        .addListener((o, was, is) -> control.pseudoClassStateChanged(WRONG, !is.isEmpty()));
  }

  /** The words beside the field; they take no room while nothing is wrong. */
  static Label error(Entry<?> entry) {
    Label label = new Label();
    label.setId(entry.id() + "-error");
    label.getStyleClass().add("field-error");
    label.setWrapText(true);
    label.setMaxWidth(Double.MAX_VALUE);
    label.textProperty().bind(entry.errorProperty());
    label.visibleProperty().bind(entry.errorProperty().isNotEmpty());
    label.managedProperty().bind(label.visibleProperty());
    return label;
  }

  static Tooltip tooltip(String words) {
    Tooltip tooltip = new Tooltip(words);
    tooltip.setWrapText(true);
    tooltip.setMaxWidth(320);
    tooltip.setShowDelay(SOON);
    return tooltip;
  }
}
