package tankyard.engine.takeoff;

import java.util.Optional;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Sundry;
import tankyard.engine.lease.Quote;

/**
 * What is counted.
 *
 * @param item id in the catalogue, if it has such a thing
 */
record Ware(Optional<String> item, String text, Quote.Basis measure, Sundry.Nature nature) {

  static Ware of(CatalogItem item, Quote.Basis measure) {
    Sundry.Nature nature = item instanceof Sundry s ? s.nature() : Sundry.Nature.GOODS;
    return new Ware(Optional.of(item.id()), item.name(), measure, nature);
  }

  static Ware each(CatalogItem item) {
    return of(item, Quote.Basis.EACH);
  }

  /** Something the catalogue does not have. */
  static Ware unlisted(String text, Quote.Basis measure) {
    return new Ware(Optional.empty(), text, measure, Sundry.Nature.GOODS);
  }

  Ware asWork() {
    return new Ware(item, text, measure, Sundry.Nature.WORK);
  }
}
