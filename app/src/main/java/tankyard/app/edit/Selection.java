package tankyard.app.edit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;

/**
 * What is picked: ids of things and lines, in the order they were picked. An id that the lease no
 * longer has drops out by itself.
 */
public final class Selection {
  private final LeaseStore store;
  private final ReadOnlyObjectWrapper<List<String>> ids =
      new ReadOnlyObjectWrapper<>(this, "ids", List.of());
  private final ReadOnlyObjectWrapper<Reveal> reveal = new ReadOnlyObjectWrapper<>(this, "reveal");

  /**
   * A wish to see something on the map.
   *
   * @param number tells two wishes for the same thing apart
   */
  public record Reveal(String id, long number) {}

  public Selection(LeaseStore store) {
    this.store = store;
    store.leaseProperty().addListener((o, before, after) -> prune(after));
  }

  public List<String> ids() {
    return ids.get();
  }

  public ReadOnlyObjectProperty<List<String>> idsProperty() {
    return ids.getReadOnlyProperty();
  }

  public boolean isEmpty() {
    return ids().isEmpty();
  }

  public boolean has(String id) {
    return ids().contains(id);
  }

  /** The id where exactly one is picked. */
  public Optional<String> single() {
    return ids().size() == 1 ? Optional.of(ids().get(0)) : Optional.empty();
  }

  public Optional<Thing> singleThing() {
    return single().flatMap(store.lease()::thing);
  }

  public Optional<Line> singleLine() {
    return single().flatMap(store.lease()::line);
  }

  public void select(String id) {
    select(List.of(id));
  }

  public void select(Collection<String> wanted) {
    List<String> next = List.copyOf(new LinkedHashSet<>(wanted));
    if (!next.equals(ids())) {
      ids.set(next);
    }
  }

  /** Adds it, or takes it out where it is in. */
  public void toggle(String id) {
    Set<String> next = new LinkedHashSet<>(ids());
    if (!next.remove(id)) {
      next.add(id);
    }
    select(next);
  }

  public void clear() {
    select(List.of());
  }

  /** Picks it and asks the map to bring it into view: for a finding, a bill line, a profile. */
  public void reveal(String id) {
    select(id);
    long number = reveal.get() == null ? 1 : reveal.get().number() + 1;
    reveal.set(new Reveal(id, number));
  }

  /** The latest wish to see something; null before the first. */
  public ReadOnlyObjectProperty<Reveal> revealProperty() {
    return reveal.getReadOnlyProperty();
  }

  private void prune(Lease lease) {
    select(
        ids().stream()
            .filter(id -> lease.thing(id).isPresent() || lease.line(id).isPresent())
            .toList());
  }
}
