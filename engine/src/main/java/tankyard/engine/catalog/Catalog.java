package tankyard.engine.catalog;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.OwnPipe;

/** Everything that can be bought, by id. Immutable. */
public final class Catalog {
  private static final Catalog EMPTY = new Catalog(Map.of());

  private final Map<String, CatalogItem> byId;

  private Catalog(Map<String, CatalogItem> byId) {
    this.byId = byId;
  }

  public static Catalog empty() {
    return EMPTY;
  }

  /** Puts items together; two with one id can't stand. */
  public static Catalog of(Collection<? extends CatalogItem> items) {
    return EMPTY.with(items);
  }

  /** Adds items; two with one id can't stand. */
  public Catalog with(Collection<? extends CatalogItem> more) {
    Map<String, CatalogItem> all = new LinkedHashMap<>(byId);
    for (CatalogItem item : more) {
      CatalogItem other = all.put(item.id(), item);
      if (other != null) {
        throw new IllegalArgumentException(
            "The id \""
                + item.id()
                + "\" stands for both "
                + other.name()
                + " and "
                + item.name()
                + "; every id must be the only one of its name");
      }
    }
    return new Catalog(all);
  }

  /** With a lease's own pipes, which come before a catalogue's pipe of the same id. */
  public Catalog withOwnPipes(List<OwnPipe> own) {
    Map<String, CatalogItem> all = new LinkedHashMap<>(byId);
    own.forEach(pipe -> all.put(pipe.id(), OwnPipes.pipe(pipe)));
    return new Catalog(all);
  }

  public Optional<CatalogItem> item(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  public <T extends CatalogItem> Optional<T> item(String id, Class<T> kind) {
    return item(id).filter(kind::isInstance).map(kind::cast);
  }

  public Optional<Pipe> pipe(String id) {
    return item(id, Pipe.class);
  }

  /** The loss of a fitting or hand valve; empty where it is no such thing or has none. */
  public Optional<Loss> loss(String id) {
    CatalogItem item = byId.get(id);
    if (item instanceof Fitting fitting) {
      return Optional.of(fitting.loss());
    }
    return item instanceof ValveType valve ? valve.loss() : Optional.empty();
  }

  /** Every item of a kind, small ones first. */
  public <T extends CatalogItem> List<T> list(Class<T> kind) {
    return byId.values().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .sorted(Comparator.<T>comparingDouble(CatalogItem::order).thenComparing(CatalogItem::id))
        .toList();
  }

  public List<CatalogItem> all() {
    return List.copyOf(byId.values());
  }
}
