package tankyard.engine.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tankyard.engine.api.Cancel;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;
import tankyard.engine.report.doc.Results;

/** The worked design cases with what the engine makes of them. */
public final class Examples {
  private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

  private Examples() {}

  public static Results of(String name) throws IOException {
    return of(Path.of("../docs/examples", name + ".lease.json"));
  }

  /** Each of them. */
  public static List<Results> all() throws IOException {
    List<Results> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("../docs/examples"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".lease.json")).sorted().toList()) {
        all.add(of(file));
      }
    }
    return all;
  }

  private static Results of(Path file) throws IOException {
    Catalog none = Catalog.empty();
    Tankyard tankyard = new Tankyard(none, PriceList.empty(), DAY);
    Lease lease = LeaseFiles.read(file);
    return Results.of(tankyard.answer(lease), none, DAY)
        .withCures(tankyard.cures(lease, Cancel.NEVER));
  }
}
