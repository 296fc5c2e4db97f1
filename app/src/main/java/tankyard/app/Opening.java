package tankyard.app;

import java.util.concurrent.CompletableFuture;
import tankyard.engine.catalog.CatalogSource;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;

/**
 * What the window opens on: the catalogue and the first lease. Both are read on a thread of their
 * own while the screen comes up, which is when a person waits.
 */
record Opening(CatalogSource catalog, Lease lease) {
  private static CompletableFuture<Opening> ahead;

  /** Starts reading; called as early as can be. */
  static synchronized void begin() {
    if (ahead == null) {
      ahead = CompletableFuture.supplyAsync(Opening::read);
    }
  }

  /** What was read, waited for where it must be. */
  static Opening get() {
    begin();
    return ahead.join();
  }

  private static Opening read() {
    CatalogSource catalog = Catalogs.find();
    catalog.catalog(); // So that its classes are there.
    return new Opening(catalog, Studio.firstLease(catalog));
  }
}
