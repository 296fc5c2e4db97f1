package tankyard.app.figures;

import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;

/** Words that end in dots where their column is narrow; the pointer on them shows the whole. */
final class WordsCell<S> extends TableCell<S, String> {
  private final Tooltip whole = new Tooltip();

  @Override
  protected void updateItem(String item, boolean empty) {
    super.updateItem(item, empty);
    boolean none = empty || item == null || item.isEmpty();
    setText(none ? null : item);
    whole.setText(item);
    setTooltip(none ? null : whole);
  }
}
