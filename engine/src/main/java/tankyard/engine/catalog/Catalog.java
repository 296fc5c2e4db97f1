package tankyard.engine.catalog;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import tankyard.engine.lease.OwnPipe;

/** Everything that can be bought, by id. Immutable. */
public final class Catalog {
  private static final Catalog EMPTY = new Catalog(Map.of(), Map.of());

  private final Map<String, CatalogItem> byId;
  private final Map<String, Pipe> own;
  private final Map<Class<?>, List<? extends CatalogItem>> lists;
  private final Parts parts;

  private Catalog(Map<String, CatalogItem> byId, Map<String, Pipe> own) {
    this.byId = byId;
    this.own = own;
    lists = new ConcurrentHashMap<>();
    parts = new Parts(byId.values());
  }

  /** The same items with other pipes of a lease's own, which share what was sorted already. */
  private Catalog(Catalog base, Map<String, Pipe> own) {
    byId = base.byId;
    this.own = own;
    lists = base.lists;
    parts = base.parts;
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
    return new Catalog(all, own);
  }

  /** With a lease's own pipes, which come before a catalogue's pipe of the same id. */
  public Catalog withOwnPipes(List<OwnPipe> pipes) {
    Map<String, Pipe> all = new LinkedHashMap<>(own);
    pipes.forEach(pipe -> all.put(pipe.id(), OwnPipes.pipe(pipe)));
    return pipes.isEmpty() ? this : new Catalog(this, all);
  }

  public Optional<CatalogItem> item(String id) {
    Pipe pipe = own.get(id);
    return Optional.ofNullable(pipe == null ? byId.get(id) : pipe);
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

  /** Fittings and valves by what they are and their size. */
  public Parts parts() {
    return parts;
  }

  /** Every item of a kind, small ones first. */
  public <T extends CatalogItem> List<T> list(Class<T> kind) {
    if (kind == Pipe.class && !own.isEmpty()) {
      return sorted(kind, all());
    }
    @SuppressWarnings("unchecked") // what is kept for a kind is of that kind
    List<T> kept = (List<T>) lists.computeIfAbsent(kind, k -> sorted(kind, byId.values()));
    return kept;
  }

  private static <T extends CatalogItem> List<T> sorted(
      Class<T> kind, Collection<CatalogItem> items) {
    return items.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .sorted(Comparator.<T>comparingDouble(CatalogItem::order).thenComparing(CatalogItem::id))
        .toList();
  }

  public List<CatalogItem> all() {
    Map<String, CatalogItem> all = new LinkedHashMap<>(byId);
    all.putAll(own);
    return List.copyOf(all.values());
  }
}
