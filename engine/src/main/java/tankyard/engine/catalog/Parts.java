package tankyard.engine.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.units.Pressure;

/** Fittings and valves by what they are and their size, for those who know no ids. */
public final class Parts {
  private record FittingKey(Fitting.Part part, Material material, NominalSize size) {}

  private record ValveKey(ValveType.Duty duty, NominalSize size) {}

  private final Map<FittingKey, Fitting> fittings = new HashMap<>();
  private final Map<ValveKey, List<ValveType>> valves = new HashMap<>();

  Parts(Collection<CatalogItem> items) {
    for (CatalogItem item : items) {
      if (item instanceof Fitting fitting) {
        put(fitting);
      } else if (item instanceof ValveType valve) {
        put(valve);
      }
    }
    valves.values().forEach(list -> list.sort(Comparator.comparingDouble(Parts::stands)));
  }

  private void put(Fitting f) {
    if (f.nominal().isPresent() && f.material().isPresent()) {
      fittings.putIfAbsent(new FittingKey(f.part(), f.material().get(), f.nominal().get()), f);
    }
  }

  private void put(ValveType v) {
    v.nominal()
        .map(size -> new ValveKey(v.duty(), size))
        .ifPresent(key -> valves.computeIfAbsent(key, k -> new ArrayList<>()).add(v));
  }

  private static double stands(ValveType valve) {
    return valve.rating().map(Pressure::pascals).orElse(Double.MAX_VALUE);
  }

  public Optional<Fitting> fitting(Fitting.Part part, Material material, NominalSize size) {
    return Optional.ofNullable(fittings.get(new FittingKey(part, material, size)));
  }

  /** Weakest body first. */
  public List<ValveType> valves(ValveType.Duty duty, NominalSize size) {
    return List.copyOf(valves.getOrDefault(new ValveKey(duty, size), List.of()));
  }
}
