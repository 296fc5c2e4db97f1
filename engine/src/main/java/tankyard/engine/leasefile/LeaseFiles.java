package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Unknowns;

/** The one door to lease files. */
public final class LeaseFiles {
  /** How a lease file's name ends. */
  public static final String EXTENSION = ".lease.json";

  private LeaseFiles() {}

  public static Lease read(Path file) throws IOException {
    return read(file.getFileName().toString(), Files.readAllBytes(file));
  }

  public static Lease read(String name, InputStream in) throws IOException {
    return read(name, in.readAllBytes());
  }

  private static Lease read(String name, byte[] bytes) throws IOException {
    JsonNode tree = LeaseMapper.mapper().readTree(new String(bytes, StandardCharsets.UTF_8));
    if (!(tree instanceof ObjectNode object)) {
      throw new IOException(name + " is no lease file");
    }
    for (String part : new String[] {"practice", "prices"}) {
      if (!object.has(part)) {
        object.putObject(part);
      }
    }
    try {
      return LeaseMapper.fromTree(object).withUnknowns(Unknowns.none());
    } catch (JsonProcessingException e) {
      throw new IOException(name + ": " + e.getOriginalMessage(), e);
    }
  }

  /** The file's bytes: the same lease gives the same bytes. */
  public static byte[] write(Lease lease) {
    return toJson(lease).getBytes(StandardCharsets.UTF_8);
  }

  /** The file's text. */
  public static String toJson(Lease lease) {
    ObjectNode tree = LeaseMapper.mapper().createObjectNode();
    tree.put("format", "tankyard-lease");
    tree.put("version", 1);
    tree.setAll(LeaseMapper.toTree(lease));
    return LeasePrinter.print(tree);
  }

  public static void save(Lease lease, Path file) throws IOException {
    Files.write(file, write(lease));
  }
}
