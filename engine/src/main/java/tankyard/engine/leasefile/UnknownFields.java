package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
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

  /**
   * Puts every field back whose owner is still there. All owners are looked up first: an item's key
   * would change under our hands.
   */
  static void putBack(ObjectNode tree, Unknowns unknowns) {
    List<Owner> owners = new ArrayList<>();
    Map<String, String> sorted = new TreeMap<>(unknowns.fields());
    sorted.keySet().forEach(place -> owners.add(owner(tree, place)));
    Iterator<String> json = sorted.values().iterator();
    owners.forEach(owner -> owner.put(json.next()));
  }

  /**
   * Where a field goes.
   *
   * @param above what holds the owner, under the name {@code step}
   */
  private record Owner(JsonNode above, String step, JsonNode node, String name) {
    void put(String json) {
      JsonNode owner = node;
      if (owner.isNumber() && above instanceof ObjectNode holder) {
        // A plain ratio is written as a bare number; as an object it can carry more.
        JsonNode there = holder.get(step);
        owner = there.isObject() ? there : holder.putObject(step).set(AmountJson.VALUE, node);
      }
      if (owner instanceof ObjectNode object && !object.has(name)) {
        object.set(name, parse(json));
      }
    }
  }

  private static Owner owner(ObjectNode tree, String place) {
    String[] steps = place.substring(1).split("/", -1);
    JsonNode above = tree;
    JsonNode node = tree;
    String step = "";
    for (int i = 0; i + 1 < steps.length; i++) {
      above = node;
      step = plain(steps[i]);
      node = step(above, step);
    }
    return new Owner(above, step, node, plain(steps[steps.length - 1]));
  }

  private static JsonNode step(JsonNode owner, String name) {
    return owner instanceof ArrayNode
        ? owner.path(ItemKeys.of(owner).indexOf(name).orElse(-1))
        : owner.path(name);
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
