package tankyard.engine.lease;

import java.util.Map;

/**
 * Fields of a lease file that this version does not know. They are carried along and written back,
 * so that a file from a newer version loses nothing here.
 *
 * @param fields place in the file (ids stand for array positions) to the JSON text found there
 */
public record Unknowns(Map<String, String> fields) {
  public Unknowns {
    fields = Map.copyOf(fields);
  }

  public static Unknowns none() {
    return new Unknowns(Map.of());
  }
}
