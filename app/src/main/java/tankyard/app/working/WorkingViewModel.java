package tankyard.app.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The working that is looked at, and the ones it was reached through. */
public final class WorkingViewModel {
  private final Consumer<String> clipboard;
  private final ReadOnlyObjectWrapper<List<Working>> trail =
      new ReadOnlyObjectWrapper<>(this, "trail", List.of());

  /**
   * Nothing is looked at yet.
   *
   * @param clipboard takes the working as text
   */
  public WorkingViewModel(Consumer<String> clipboard) {
    this.clipboard = clipboard;
  }

  /** From the number that was asked for down to the one looked at. */
  public ReadOnlyObjectProperty<List<Working>> trailProperty() {
    return trail.getReadOnlyProperty();
  }

  public Optional<Working> current() {
    List<Working> now = trail.get();
    return now.isEmpty() ? Optional.empty() : Optional.of(now.get(now.size() - 1));
  }

  public void open(Working working) {
    trail.set(List.of(working));
  }

  /** Goes on to the working of one of the inputs. */
  public void goInto(Working working) {
    List<Working> longer = new ArrayList<>(trail.get());
    longer.add(working);
    trail.set(List.copyOf(longer));
  }

  /** Goes back to an earlier one of the trail. */
  public void backTo(int position) {
    trail.set(List.copyOf(trail.get().subList(0, position + 1)));
  }

  public boolean canGoBack() {
    return trail.get().size() > 1;
  }

  public void back() {
    if (canGoBack()) {
      backTo(trail.get().size() - 2);
    }
  }

  /** The working an input came from, if it was itself worked out. */
  public static Optional<Working> workingOf(Working whole, Term term) {
    return whole.from().stream()
        .filter(w -> w.symbol().equals(term.symbol()) || w.title().equals(term.name()))
        .findFirst();
  }

  /** Workings that stand behind no single input. */
  public static List<Working> others(Working whole) {
    List<Working> ofTerms =
        whole.terms().stream().flatMap(t -> workingOf(whole, t).stream()).toList();
    return whole.from().stream().filter(w -> !ofTerms.contains(w)).toList();
  }

  public void copy() {
    current().ifPresent(working -> clipboard.accept(WorkingText.of(working)));
  }
}
