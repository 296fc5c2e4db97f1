package tankyard.engine.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Optional;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.CatalogSource;
import tankyard.engine.catalog.Catalogs;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.report.doc.Results;

/** What every command needs: where to print, the catalogue, the way to an answer. */
final class Errand {
  /** What messages call the demo lease, which is no file of its own. */
  private static final String DEMO = "demo lease";

  private final PrintWriter out;
  private final CatalogSource source = Catalogs.find();

  Errand(PrintWriter out) {
    this.out = out;
  }

  void print(String text) {
    out.print(text);
    out.flush();
  }

  Lease demoLease() throws IOException {
    Optional<InputStream> demo = source.demoLease();
    if (demo.isEmpty()) {
      throw UnusableException.of(
          "demo", "no demo lease beside the program", "a class path with a catalogue that has one");
    }
    try (InputStream in = demo.get()) {
      return LeaseFiles.read(DEMO, in);
    }
  }

  /** Works a lease out, for what tells nothing of what would help. */
  Results results(Lease lease, LocalDate date) {
    Tankyard tankyard = Tankyard.with(source, date);
    return Results.of(tankyard.answer(lease), tankyard.catalog(), date);
  }

  /** The same with what would help: a dozen answers more. */
  Results resultsAndCures(Lease lease, LocalDate date) {
    return results(lease, date).withCures(Tankyard.with(source, date).cures(lease, Cancel.NEVER));
  }
}
