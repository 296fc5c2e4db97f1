package tankyard.engine.designs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import tankyard.engine.lease.Lease;
import tankyard.engine.leasefile.LeaseFiles;

/** The leases of the manual, as their files have them. */
public final class ExampleLease {
  private ExampleLease() {}

  /** For example {@code p1-osage-bend}. */
  public static Path file(String name) {
    return Path.of("..", "docs", "examples", name + ".lease.json");
  }

  public static Lease of(String name) {
    try {
      return LeaseFiles.read(file(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
