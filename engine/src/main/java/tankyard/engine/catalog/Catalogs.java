package tankyard.engine.catalog;

import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** The way to a catalogue. */
public final class Catalogs {
  private Catalogs() {}

  /** Every catalogue on the class path put together; an empty one where there is none. */
  public static CatalogSource find() {
    List<CatalogSource> found =
        ServiceLoader.load(CatalogSource.class).stream().map(ServiceLoader.Provider::get).toList();
    return found.size() == 1 ? found.get(0) : new Together(found);
  }

  private record Together(List<CatalogSource> sources) implements CatalogSource {
    @Override
    public Catalog catalog() {
      Catalog all = Catalog.empty();
      for (CatalogSource source : sources) {
        all = all.with(source.catalog().all());
      }
      return all;
    }

    @Override
    public PriceList prices() {
      PriceList all = PriceList.empty();
      for (CatalogSource source : sources) {
        all = all.with(source.prices().all());
      }
      return all;
    }

    @Override
    public Optional<InputStream> demoLease() {
      return sources.stream().flatMap(s -> s.demoLease().stream()).findFirst();
    }
  }
}
