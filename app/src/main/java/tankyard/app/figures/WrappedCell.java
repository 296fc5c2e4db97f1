package tankyard.app.figures;

import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.text.Text;

/**
 * Words that go on in a second line where their column is narrow. A cell's own text would be cut
 * off with dots, since a table asks its rows for their height before it tells them their width; so
 * this one asks the column.
 */
final class WrappedCell<S> extends TableCell<S, String> {
  private static final double PADDING_PX = 18;

  private final Text words = new Text();

  WrappedCell(TableColumn<S, String> column) {
    words.fillProperty().bind(textFillProperty());
    words.wrappingWidthProperty().bind(column.widthProperty().subtract(PADDING_PX));
  }

  @Override
  protected void updateItem(String item, boolean empty) {
    super.updateItem(item, empty);
    words.setText(item);
    setGraphic(empty || item == null || item.isEmpty() ? null : words);
  }
}
