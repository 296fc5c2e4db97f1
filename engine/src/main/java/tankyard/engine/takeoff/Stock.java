package tankyard.engine.takeoff;

import java.util.List;
import java.util.Locale;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.Sundry;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.Quote;

/** Finds what the catalogue calls a part, or says in words what it should have had. */
final class Stock {
  private final Catalog catalog;

  Stock(Catalog catalog) {
    this.catalog = catalog;
  }

  Ware fitting(Fitting.Part part, Material material, NominalSize size) {
    return catalog
        .parts()
        .fitting(part, material, size)
        .map(Ware::each)
        .orElseGet(
            () -> Ware.unlisted(size.words() + " " + words(part) + of(material), Quote.Basis.EACH));
  }

  private static String of(Material material) {
    return material == Material.OTHER ? "" : ", " + material.words();
  }

  /** The weakest valve of its kind and size that there is: for everything but injection. */
  Ware valve(ValveType.Duty duty, NominalSize size) {
    List<ValveType> valves = catalog.parts().valves(duty, size);
    return valves.isEmpty() ? unlisted(duty, size, "") : Ware.each(valves.get(0));
  }

  /** The strongest one, for the injection side. */
  Ware injectionValve(ValveType.Duty duty, NominalSize size) {
    List<ValveType> valves = catalog.parts().valves(duty, size);
    return valves.isEmpty()
        ? unlisted(duty, size, ", injection")
        : Ware.each(valves.get(valves.size() - 1));
  }

  private static Ware unlisted(ValveType.Duty duty, NominalSize size, String where) {
    return Ware.unlisted(size.words() + " " + words(duty) + " valve" + where, Quote.Basis.EACH);
  }

  /** A sundry by id; {@code text} says what it is where the catalogue has none. */
  Ware sundry(String id, String text, Quote.Basis measure) {
    return catalog
        .item(id, Sundry.class)
        .map(item -> Ware.of(item, measure))
        .orElseGet(() -> Ware.unlisted(text, measure));
  }

  Ware sundry(String id, String text) {
    return sundry(id, text, Quote.Basis.EACH);
  }

  /** Work by id, kept as work where the catalogue has none. */
  Ware work(String id, String text, Quote.Basis measure) {
    return sundry(id, text, measure).asWork();
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
