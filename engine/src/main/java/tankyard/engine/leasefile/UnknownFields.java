package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Unknowns;

/**
 * Keeps the fields of a file that this version does not know. A place is a JSON pointer in which an
 * item's key (see {@code ItemKeys}) stands for its number: {@code /wells/W1/colour}.
 */
final class UnknownFields {
  private static final RecordShape AMOUNT =
      new RecordShape(
          Map.of(
              AmountJson.VALUE,
              new RecordShape.Field(AmountJson.VALUE, Double.class, false, false),
              AmountJson.UNIT,
              new RecordShape.Field(AmountJson.UNIT, String.class, false, true)));

  private final Map<String, String> found = new HashMap<>();

  private UnknownFields() {}

  /**
   * What the file says beyond what this version knows.
   *
   * @param raw the file's tree
   * @param written the tree of the lease that was read from it; it gives the items' keys
   */
  static Unknowns collect(JsonNode raw, JsonNode written) {
    UnknownFields unknown = new UnknownFields();
    unknown.object(raw, written, RecordShape.of(Lease.class), "");
    return new Unknowns(unknown.found);
  }

  private void object(JsonNode raw, JsonNode written, RecordShape shape, String place) {
    raw.fields()
        .forEachRemaining(
            entry -> {
              String path = Complaint.child(place, entry.getKey());
              RecordShape.Field field = shape.fields().get(entry.getKey());
              if (field == null) {
                found.put(path, LeasePrinter.compact(entry.getValue()));
              } else {
                field(entry.getValue(), written.path(entry.getKey()), field, path);
              }
            });
  }

  private void field(JsonNode raw, JsonNode written, RecordShape.Field field, String place) {
    RecordShape shape;
    if (field.isRecord()) {
      shape = RecordShape.of(field.type());
    } else if (raw.isObject()) {
      shape = AMOUNT;
    } else {
      return;
    }
    if (!field.list()) {
      object(raw, written, shape, place);
      return;
    }
    ItemKeys keys = ItemKeys.of(written);
    for (int i = 0; i < raw.size(); i++) {
      object(raw.get(i), written.path(i), shape, Complaint.child(place, keys.at(i)));
    }
  }

  /** Puts every field back whose owner is still there. */
  static void putBack(ObjectNode tree, Unknowns unknowns) {
    new TreeMap<>(unknowns.fields()).forEach((place, json) -> putBack(tree, place, json));
  }

  private static void putBack(ObjectNode tree, String place, String json) {
    String[] steps = place.substring(1).split("/", -1);
    JsonNode owner = tree;
    for (int i = 0; i + 1 < steps.length; i++) {
      owner = step(owner, plain(steps[i]));
    }
    String name = plain(steps[steps.length - 1]);
    if (owner instanceof ObjectNode object && !object.has(name)) {
      object.set(name, parse(json));
    }
  }

  private static JsonNode step(JsonNode owner, String name) {
    if (owner instanceof ArrayNode) {
      Optional<Integer> index = ItemKeys.of(owner).indexOf(name);
      return owner.path(index.orElse(-1));
    }
    JsonNode value = owner.path(name);
    if (value.isNumber() && owner instanceof ObjectNode object) {
      // A plain ratio is written as a bare number; as an object it can carry more.
      return object.putObject(name).set(AmountJson.VALUE, value);
    }
    return value;
  }

  private static String plain(String step) {
    return step.replace("~1", "/").replace("~0", "~");
  }

  private static JsonNode parse(String json) {
    try {
      return LeaseMapper.mapper().readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("A kept field is no JSON: " + json, e);
    }
  }
}
