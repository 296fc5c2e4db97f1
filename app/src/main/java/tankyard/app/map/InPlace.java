package tankyard.app.map;

import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import tankyard.app.map.tools.MapDesk;

/**
 * A field that opens on the map where something stands: to rename it, to type a height. Enter takes
 * what was typed, Escape drops it; what can't be taken stays in the field with the reason.
 */
final class InPlace {
  private static final double WIDTH_PX = 190;
  private static final PseudoClass WRONG = PseudoClass.getPseudoClass("danger");

  private final MapView view;
  private final TextField field = new TextField();
  private final Tooltip reason = new Tooltip();
  private Function<String, Optional<String>> take = typed -> Optional.empty();
  private MapDesk desk;

  InPlace(MapView view) {
    this.view = view;
    field.setId("map-in-place");
    field.getStyleClass().add("ty-rename");
    field.setVisible(false);
    field.setManaged(false);
    field.setOnAction(
        e -> {
          commit();
          if (!field.isVisible()) {
            view.requestFocus();
          }
        });
    field.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    field.focusedProperty().addListener((o, was, is) -> focusChanged(is));
  }

  TextField field() {
    return field;
  }

  /**
   * Opens it.
   *
   * @param taking is given what was typed and returns why it can't be taken, or nothing
   */
  void open(
      MapDesk mapDesk,
      double x,
      double y,
      String typed,
      String prompt,
      Function<String, Optional<String>> taking) {
    desk = mapDesk;
    take = taking;
    field.setPromptText(prompt);
    field.setText(typed);
    field.setAccessibleText(prompt);
    double left = Math.max(4, Math.min(view.getWidth() - WIDTH_PX - 4, x));
    double top = Math.max(4, Math.min(view.getHeight() - 32, y));
    field.setVisible(true);
    field.resizeRelocate(left, top, WIDTH_PX, 28);
    field.requestFocus();
    field.selectAll();
  }

  private void pressed(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      close();
      view.requestFocus();
      e.consume();
    }
  }

  private void focusChanged(boolean focused) {
    if (!focused && field.isVisible()) {
      commit();
    }
  }

  private void commit() {
    if (!field.isVisible()) {
      return;
    }
    Optional<String> refused = take.apply(field.getText());
    if (refused.isPresent()) {
      reason.setText(refused.get());
      field.setTooltip(reason);
      desk.refusalProperty().set(refused.get());
      field.pseudoClassStateChanged(WRONG, true);
    } else {
      close();
    }
  }

  private void close() {
    field.setVisible(false);
    field.setTooltip(null);
    field.pseudoClassStateChanged(WRONG, false);
  }
}
