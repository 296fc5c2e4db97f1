package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Dimension;

/**
 * From the one berm of a site, a rectangle from its south-west corner, to berms as things of the
 * map with corners of their own. A berm whose height was typed stood already. A rectangle that
 * can't be read stays where it is.
 */
final class BermsWithCorners implements Migration {
  private static final double GRAIN = 1e6;

  @Override
  public int from() {
    return 1;
  }

  @Override
  public void apply(ObjectNode tree) {
    boolean old = tree.path("site").path("berm").isObject() && tree.path("berms").isMissingNode();
    if (!old) {
      return;
    }
    ObjectNode site = (ObjectNode) tree.get("site");
    ObjectNode berm = (ObjectNode) site.get("berm");
    ArrayNode corners;
    try {
      corners = corners(berm);
    } catch (IllegalArgumentException e) {
      return;
    }
    ObjectNode thing = LeaseMapper.mapper().createObjectNode();
    thing.put("id", freeId(tree));
    thing.put("name", "Berm");
    thing.set("corners", corners);
    thing.put("status", berm.has("height") ? "have" : "new");
    berm.remove(List.of("corner", "length", "width"));
    thing.setAll(berm);
    site.remove("berm");
    tree.putArray("berms").add(thing);
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
