package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import tankyard.engine.lease.Lease;

/**
 * Every field that a document fills in, with its place.
 *
 * @param owner the record it belongs to
 */
record DocumentPlaces(String pointer, Class<?> owner, RecordShape.Field field) {

  static List<DocumentPlaces> of(JsonNode tree, Predicate<DocumentPlaces> wanted) {
    List<DocumentPlaces> found = new ArrayList<>();
    collect(tree, Lease.class, "", found);
    return found.stream().filter(wanted).toList();
  }

  private static void collect(
      JsonNode node, Class<?> owner, String place, List<DocumentPlaces> found) {
    for (RecordShape.Field field : RecordShape.of(owner).fields().values()) {
      JsonNode value = node.path(field.name());
      String pointer = place + "/" + field.name();
      if (value.isMissingNode()) {
        continue;
      }
      found.add(new DocumentPlaces(pointer, owner, field));
      if (field.isRecord() && field.list()) {
        for (int i = 0; i < value.size(); i++) {
          collect(value.get(i), field.type(), pointer + "/" + i, found);
        }
      } else if (field.isRecord()) {
        collect(value, field.type(), pointer, found);
      }
    }
  }

  boolean isQuantity() {
    return QuantityKind.of(field.type()).isPresent();
  }

  boolean isEnum() {
    return field.type().isEnum();
  }

  boolean is(String record, String name) {
    return owner.getSimpleName().equals(record) && field.name().equals(name);
  }
}
