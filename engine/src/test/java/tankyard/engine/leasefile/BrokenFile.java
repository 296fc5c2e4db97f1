package tankyard.engine.leasefile;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A file that must not be read.
 *
 * @param kind what sort of damage
 * @param place the JSON path its first error must name; empty where the text is broken, and the
 *     error must name line and column instead
 * @param found what the error must say it found
 */
record BrokenFile(String kind, byte[] bytes, Optional<String> place, String found) {

  static BrokenFile text(String kind, String text, String found) {
    return new BrokenFile(kind, text.getBytes(StandardCharsets.UTF_8), Optional.empty(), found);
  }
}
