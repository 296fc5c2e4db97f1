package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Dimension;

/**
 * From the one berm of a site, a rectangle from its south-west corner, to berms as things of the
 * map with corners of their own. A berm whose height was typed stood already. A rectangle that
 * can't be read is refused, as version 1 did.
 */
final class BermsWithCorners implements Migration {
  private static final double GRAIN = 1e6;

  @Override
  public int from() {
    return 1;
  }

  @Override
  public Optional<Complaint> apply(ObjectNode tree) {
    boolean old = tree.path("site").path("berm").isObject() && tree.path("berms").isMissingNode();
    if (!old) {
      return Optional.empty();
    }
    ObjectNode site = (ObjectNode) tree.get("site");
    ObjectNode berm = (ObjectNode) site.get("berm");
    Optional<Complaint> wrong = wrong(berm);
    if (wrong.isEmpty()) {
      ObjectNode thing = berm.deepCopy();
      thing.remove(List.of("corner", "length", "width"));
      thing.put("id", freeId(tree));
      thing.put("name", "Berm");
      thing.set("corners", corners(berm));
      thing.put("status", berm.hasNonNull("height") ? "have" : "new");
      site.remove("berm");
      tree.putArray("berms").add(thing);
    }
    return wrong;
  }

  private static Optional<Complaint> wrong(ObjectNode berm) {
    return Stream.of(
            place(berm.path("corner").path("east"), "/corner/east"),
            place(berm.path("corner").path("north"), "/corner/north"),
            side(berm, "length"),
            side(berm, "width"))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Complaint> place(JsonNode node, String field) {
    try {
      amount(node);
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.of(complaint(node, field, "a length"));
    }
  }

  private static Optional<Complaint> side(ObjectNode berm, String field) {
    JsonNode node = berm.path(field);
    return place(node, "/" + field)
        .or(
            () ->
                amount(node).value() > 0
                    ? Optional.empty()
                    : Optional.of(complaint(node, "/" + field, "a length above zero")));
  }

  private static Complaint complaint(JsonNode node, String field, String accepted) {
    String found = node.isMissingNode() ? "nothing" : Complaint.shown(node);
    return new Complaint("/site/berm" + field, found, accepted);
  }

  private static String freeId(ObjectNode tree) {
    List<String> used = tree.findValuesAsText("id");
    int number = 1;
    while (used.contains("BM" + number)) {
      number++;
    }
    return "BM" + number;
  }

  /** South-west, south-east, north-east, north-west. */
  private static ArrayNode corners(ObjectNode berm) {
    Amount west = amount(berm.path("corner").path("east"));
    Amount south = amount(berm.path("corner").path("north"));
    Amount east = sum(west, amount(berm.path("length")));
    Amount north = sum(south, amount(berm.path("width")));
    return LeaseMapper.mapper()
        .createArrayNode()
        .add(corner(west, south))
        .add(corner(east, south))
        .add(corner(east, north))
        .add(corner(west, north));
  }

  private static Amount amount(JsonNode node) {
    return AmountJson.read(node, Dimension.LENGTH);
  }

  private static Amount sum(Amount start, Amount more) {
    double value = start.value() + more.in(start.unit());
    return new Amount(Math.rint(value * GRAIN) / GRAIN, start.unit());
  }

  private static ObjectNode corner(Amount east, Amount north) {
    ObjectNode corner = LeaseMapper.mapper().createObjectNode();
    corner.set("east", AmountJson.write(east));
    corner.set("north", AmountJson.write(north));
    return corner;
  }
}
