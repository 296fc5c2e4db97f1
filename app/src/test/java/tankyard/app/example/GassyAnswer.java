package tankyard.app.example;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.leasefile.LeaseFiles;

/** The example lease whose wells send gas down the flow lines, worked out. */
public final class GassyAnswer {
  private static final Path FILE = Path.of("..", "docs", "examples", "g1-windy-gap.lease.json");

  private GassyAnswer() {}

  public static LeaseAnswer answer() {
    try {
      return new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 1, 2))
          .answer(LeaseFiles.read(FILE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
