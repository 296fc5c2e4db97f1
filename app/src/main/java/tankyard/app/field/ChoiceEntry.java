package tankyard.app.field;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * One of a list. A value the list does not have, such as a pipe no catalogue knows, is shown first
 * and stays until another is chosen.
 *
 * @param <T> what is chosen; an Optional where nothing is a choice too
 */
public final class ChoiceEntry<R, T> extends Entry<R> {
  private final Part<R, T> part;
  private final Function<R, List<T>> choices;
  private final Function<T, String> words;
  private final ObservableList<T> items = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<T> chosen = new ReadOnlyObjectWrapper<>(this, "chosen");

  ChoiceEntry(
      EntryContext<R> context,
      String id,
      String label,
      String why,
      Part<R, T> part,
      Function<R, List<T>> choices,
      Function<T, String> words) {
    super(context, id, label, why);
    this.part = part;
    this.choices = choices;
    this.words = words;
  }

  public ObservableList<T> items() {
    return items;
  }

  public ReadOnlyObjectProperty<T> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  public String words(T item) {
    return item == null ? "" : words.apply(item);
  }

  public void choose(T item) {
    if (item == null || Objects.equals(item, chosen.get())) {
      return;
    }
    change(whole -> part.with(whole, item));
  }

  @Override
  void show(R whole) {
    T value = part.in(whole);
    List<T> now = choices.apply(whole);
    if (!now.contains(value)) {
      now =
          java.util.stream.Stream.concat(java.util.stream.Stream.of(value), now.stream()).toList();
    }
    if (!items.equals(now)) {
      items.setAll(now);
    }
    chosen.set(value);
    setError("");
  }
}
