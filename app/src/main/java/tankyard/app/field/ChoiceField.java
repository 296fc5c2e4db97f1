package tankyard.app.field;

import javafx.collections.ListChangeListener;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** One of a list, as a drop-down. */
final class ChoiceField<T> extends ComboBox<T> {
  private final ChoiceEntry<?, T> entry;
  private boolean following;

  ChoiceField(ChoiceEntry<?, T> entry) {
    super(entry.items());
    this.entry = entry;
    setId(entry.id());
    setMaxWidth(Double.MAX_VALUE);
    setVisibleRowCount(14);
    setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T item) {
            return entry.words(item);
          }

          @Override
          public T fromString(String words) {
            throw new UnsupportedOperationException("The list is not typed into");
          }
        });
    entry.items().addListener((ListChangeListener<T>) change -> follow());
    entry.chosenProperty().addListener((o, was, is) -> follow());
    valueProperty().addListener((o, was, is) -> choose(is));
    follow();
    Describe.control(this, entry);
  }

  private void choose(T item) {
    if (!following) {
      entry.choose(item);
      follow(); // a refused choice goes back
    }
  }

  private void follow() {
    following = true;
    setValue(entry.chosenProperty().get());
    following = false;
  }
}
