package tankyard.engine.leasefile;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import tankyard.engine.lease.Lease;

/** A program that saves one lease after another until it is killed, and says so. */
final class SaveLoop {
  /** A few megabytes, so that nearly all of the time goes into writing them. */
  private static final int NOTE = 8_000_000;

  private SaveLoop() {}

  static Lease small(int version) {
    return SampleLease.small().withName(name(version));
  }

  /** A lease with a very long note. */
  static byte[] large(int version) {
    String small = LeaseFiles.toJson(small(version));
    String noted = small.replace("\"site\"", "\"note\": \"" + "x".repeat(NOTE) + "\",\n  \"site\"");
    return noted.getBytes(StandardCharsets.UTF_8);
  }

  private static String name(int version) {
    return "version %06d".formatted(version);
  }

  /** Arguments: the file; for large leases a file with the first of them. */
  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[0]);
    byte[] large = args.length > 1 ? Files.readAllBytes(Path.of(args[1])) : null;
    for (int version = 1; ; version++) {
      System.out.println("saving " + version);
      if (large == null) {
        LeaseFiles.save(small(version), file);
      } else {
        AtomicSave.at(file).replace(renamed(large, version));
      }
      System.out.println("saved " + version);
    }
  }

  /** Writes the version into the name in place, without Jackson: it costs next to nothing. */
  private static byte[] renamed(byte[] large, int version) {
    byte[] name = name(version).getBytes(StandardCharsets.UTF_8);
    int at = new String(large, 0, 200, StandardCharsets.UTF_8).indexOf("version 0");
    System.arraycopy(name, 0, large, at, name.length);
    return large;
  }
}
