package tankyard.app.field;

import atlantafx.base.controls.CustomTextField;
import javafx.beans.binding.Bindings;
import javafx.event.Event;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** One line to type into: Enter or leaving takes it, Escape puts back what was there. */
final class TypedField extends CustomTextField {
  private static final KeyCombination UNDO = KeyCombination.valueOf("Shortcut+Z");
  private static final KeyCombination REDO = KeyCombination.valueOf("Shortcut+Y");

  TypedField(TypedEntry<?> entry) {
    getStyleClass().add(entry.isNumber() ? "number-field" : "word-field");
    setAlignment(entry.isNumber() ? Pos.CENTER_RIGHT : Pos.CENTER_LEFT);
    setPrefColumnCount(10);
    bind(this, entry);
    setOnAction(e -> entry.commit());
    if (entry.mayBeEmpty() && entry.isNumber()) {
      setLeft(clearButton(entry)); // so that all numbers end at the same edge
    }
  }

  /** What every text control of an entry does, one line or many. */
  static void bind(TextInputControl control, TypedEntry<?> entry) {
    control.setId(entry.id());
    control.textProperty().bindBidirectional(entry.textProperty());
    control.promptTextProperty().bind(entry.promptProperty());
    control.focusedProperty().addListener((o, was, is) -> leaveOrEnter(control, entry, is));
    control.addEventFilter(KeyEvent.KEY_PRESSED, e -> onKey(e, control, entry));
    Describe.control(control, entry);
  }

  private static void leaveOrEnter(TextInputControl control, TypedEntry<?> entry, boolean focused) {
    if (focused) {
      control.selectAll();
    } else {
      entry.commit();
    }
  }

  private static void onKey(KeyEvent event, TextInputControl control, TypedEntry<?> entry) {
    if (!entry.isDirty() && (UNDO.match(event) || REDO.match(event))) {
      passOn(event, control);
      return;
    }
    boolean puttingBack = event.getCode() == KeyCode.ESCAPE;
    if (puttingBack && (entry.isDirty() || !entry.error().isEmpty())) {
      entry.restore();
      control.selectAll();
      event.consume();
    }
  }

  /** With nothing typed, undo means the last step and not the last letter. */
  private static void passOn(KeyEvent event, TextInputControl control) {
    event.consume();
    Node above = control.getParent();
    Event.fireEvent(above, event.copyFor(above, above));
  }

  /** No tab stop: emptying the field with the keyboard does the same. */
  private static Button clearButton(TypedEntry<?> entry) {
    Button clear = new Button("↺");
    clear.setId(entry.id() + "-clear");
    clear.getStyleClass().setAll("clear-field");
    clear.setFocusTraversable(false);
    clear.setTooltip(new Tooltip("Back to what is assumed"));
    clear.visibleProperty().bind(Bindings.isNotEmpty(entry.textProperty()));
    clear.managedProperty().bind(clear.visibleProperty());
    clear.setOnAction(e -> entry.clear());
    return clear;
  }
}
