package tankyard.catalogdemo;

import java.io.InputStream;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.CatalogSource;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.catalog.csv.CatalogFiles;

/** The files beside this class. */
public final class DemoCatalog implements CatalogSource {
  private static final CatalogFiles FILES = CatalogFiles.of(DemoCatalog::open);

  private static Optional<InputStream> open(String name) {
    return Optional.ofNullable(DemoCatalog.class.getResourceAsStream(name));
  }

  @Override
  public Catalog catalog() {
    return FILES.catalog();
  }

  @Override
  public PriceList prices() {
    return FILES.prices();
  }

  @Override
  public Optional<InputStream> demoLease() {
    return open("demo.lease.json");
  }
}
