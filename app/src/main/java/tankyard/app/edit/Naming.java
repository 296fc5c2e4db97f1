package tankyard.app.edit;

import java.util.Collection;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;

/** What things are called: ids like W11, names like "Well 11", and how a step speaks of them. */
public final class Naming {
  private Naming() {}

  /** The first id with the prefix whose number is above all that the lease uses. */
  public static String nextId(Lease lease, String prefix) {
    return nextId(lease, prefix, Set.of());
  }

  /** The same, past ids that are about to be used. */
  public static String nextId(Lease lease, String prefix, Set<String> alsoTaken) {
    int highest =
        Stream.concat(usedIds(lease).stream(), alsoTaken.stream())
            .filter(id -> id.matches(prefix + "\\d{1,8}"))
            .mapToInt(id -> Integer.parseInt(id.substring(prefix.length())))
            .max()
            .orElse(0);
    return prefix + (highest + 1);
  }

  static Set<String> usedIds(Lease lease) {
    Set<String> used = new HashSet<>();
    lease.things().map(Thing::id).forEach(used::add);
    lease.lines().stream().map(Line::id).forEach(used::add);
    lease.cases().stream().map(DesignCase::id).forEach(used::add);
    return used;
  }

  /** The first name of the form "Water leg 2" that no thing and no line bears. */
  public static String nextName(Lease lease, String kind) {
    String base = kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1);
    Set<String> used = new HashSet<>();
    lease.things().map(Thing::name).forEach(used::add);
    lease.lines().stream().map(Line::name).forEach(used::add);
    int number = 1;
    while (used.contains(base + " " + number)) {
      number++;
    }
    return base + " " + number;
  }

  static String nextName(Lease lease, Service service) {
    return nextName(lease, service.words());
  }

  /** "Well 9", or "3 things". */
  public static String of(Lease lease, Collection<String> ids) {
    return ids.size() == 1 ? of(lease, ids.iterator().next()) : ids.size() + " things";
  }

  /** The name of a thing or a line; its id where the lease has neither. */
  public static String of(Lease lease, String id) {
    return lease
        .thing(id)
        .map(Thing::name)
        .or(() -> lease.line(id).map(Line::name))
        .filter(name -> !name.isBlank())
        .orElse(id);
  }
}
