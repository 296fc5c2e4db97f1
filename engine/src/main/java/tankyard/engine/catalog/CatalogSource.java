package tankyard.engine.catalog;

import java.io.InputStream;
import java.util.Optional;

/**
 * Somebody who has a catalogue. Found with {@link java.util.ServiceLoader}: name the class in
 * {@code META-INF/services/tankyard.engine.catalog.CatalogSource}.
 */
public interface CatalogSource {
  Catalog catalog();

  PriceList prices();

  /** A lease to try the program with; the caller closes it. */
  Optional<InputStream> demoLease();
}
