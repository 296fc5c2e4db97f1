package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;
import tankyard.engine.units.Dimension;

/** Breaks the values and the sense of a good lease file in many named ways. */
final class BrokenFiles {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final String good;
  private final Random random;
  private final List<BrokenFile> files = new ArrayList<>();

  private BrokenFiles(String good, long seed) {
    this.good = good;
    this.random = new Random(seed);
  }

  static List<BrokenFile> of(String good, long seed) {
    BrokenFiles broken = new BrokenFiles(good, seed);
    broken.forms();
    broken.quantities();
    broken.absurdities();
    broken.names();
    broken.sense();
    broken.directions();
    broken.heads();
    return broken.files;
  }

  private void forms() {
    for (DocumentPlaces p : some(6, p -> !p.field().optional())) {
      JsonNode wrong = p.field().list() ? JSON.textNode("none") : JSON.arrayNode().add(true);
      edit("wrong type", p.pointer(), wrong);
    }
    for (DocumentPlaces p : some(5, p -> true)) {
      edit("null", p.pointer(), JSON.nullNode());
    }
    for (DocumentPlaces p : some(8, BrokenFiles::isRequired)) {
      change("missing field", p.pointer(), "nothing", t -> remove(t, p.pointer()));
    }
    for (DocumentPlaces p : some(5, DocumentPlaces::isEnum)) {
      edit("wrong word", p.pointer(), JSON.textNode("purple"));
    }
    edit("wrong date", "/prices/quotes/0/date", JSON.textNode("next week"));
    edit("wrong date", "/prices/quotes/1/date", JSON.textNode("2026-02-30"));
    edit("wrong currency", "/prices/quotes/0/currency", JSON.textNode("dollars"));
    edit("negative price", "/prices/quotes/2/price", JSON.numberNode(-1));
    edit("empty id", "/wells/0/id", JSON.textNode(""));
  }

  private static boolean isRequired(DocumentPlaces p) {
    return !p.field().list()
        && !p.field().optional()
        && (p.field().type() != String.class || p.field().name().equals("id"))
        && !List.of("practice", "prices").contains(p.field().name());
  }

  private void quantities() {
    for (DocumentPlaces p : some(6, DocumentPlaces::isQuantity)) {
      edit("wrong unit", p.pointer(), amount(1, "furlong"));
    }
    for (DocumentPlaces p : some(3, p -> dimension(p) == Dimension.LENGTH)) {
      edit("unit of something else", p.pointer(), amount(1, "psi"));
    }
    for (DocumentPlaces p : some(3, p -> p.isQuantity() && dimension(p) != Dimension.FRACTION)) {
      edit("number without unit", p.pointer(), JSON.numberNode(12));
      edit("text without unit", p.pointer(), JSON.textNode("12"));
    }
    for (DocumentPlaces p : some(3, DocumentPlaces::isQuantity)) {
      edit("no number", p.pointer(), JSON.textNode("a good deal"));
      edit("NaN as text", p.pointer(), JSON.textNode("NaN"));
    }
    for (DocumentPlaces p : some(3, DocumentPlaces::isQuantity)) {
      String unit = Limits.of(p.owner(), p.field().name()).orElseThrow().unit().symbol();
      JsonNode endless = JSON.numberNode(new BigDecimal("1e400"));
      edit("too large to count", p.pointer(), amount(endless, unit));
    }
  }

  private void absurdities() {
    for (DocumentPlaces p : some(10, DocumentPlaces::isQuantity)) {
      Limit limit = Limits.of(p.owner(), p.field().name()).orElseThrow();
      double past = limit.most() + 0.01 * Math.max(1, Math.abs(limit.most()));
      edit("absurdly large", p.pointer(), amount(past, limit.unit().symbol()));
      double under = limit.least() - 0.01 * Math.max(1, Math.abs(limit.least()));
      edit("absurdly small or negative", p.pointer(), amount(under, limit.unit().symbol()));
    }
    edit("absurdly large", "/tanks/0/diameter", amount(1e9, "ft"));
    edit("no diameter", "/separators/0/diameter", amount(0, "in"));
    edit("no diameter", "/ownPipes/0/bore", amount(0, "in"));
    edit("more than a day", "/wells/0/runsPerDay", amount(25, "h"));
    edit("no such gravity", "/fluids/brine", amount(10.6, "SG"));
    edit("no such gravity", "/fluids/oil", amount(-131.5, "°API"));
    edit("no such temperature", "/site/groundSummer", amount(-500, "°F"));
    edit("no such share", "/practice/reliefShare", amount(900, "%"));
  }

  private void names() {
    change(
        "id used twice",
        "/wells/1/id",
        "used twice",
        t -> set(t, "/wells/1/id", id(t, "/wells/0")));
    change(
        "id used twice",
        "/tanks/0/id",
        "used twice",
        t -> set(t, "/tanks/0/id", id(t, "/wells/0")));
    change(
        "id used twice",
        "/cases/1/id",
        "used twice",
        t -> set(t, "/cases/1/id", id(t, "/cases/0")));
    change(
        "id used twice",
        "/ownPipes/1/id",
        "second time",
        t -> set(t, "/ownPipes/1/id", id(t, "/ownPipes/0")));
    change(
        "id used twice",
        "/prices/quotes/1/id",
        "second time",
        t -> set(t, "/prices/quotes/1/id", id(t, "/prices/quotes/0")));
    for (String end : List.of("/lines/0/from", "/lines/1/to", "/lines/2/to")) {
      change("missing reference", end, "no such thing", t -> set(t, end, JSON.textNode("gone")));
    }
    change(
        "line to itself",
        "/lines/0/to",
        "starts and ends at the same",
        t -> set(t, "/lines/0/to", t.at("/lines/0/from")));
  }

  private void sense() {
    change(
        "levels crossed",
        "/tanks/0/pumpOff",
        "a pump-off level of 8 ft",
        t -> {
          set(t, "/tanks/0/pumpOn", amount(7, "ft"));
          set(t, "/tanks/0/pumpOff", amount(8, "ft"));
        });
    for (String height : List.of("overflowHeight", "switchHeight", "pumpOn", "outletHeight")) {
      edit("above the shell", "/tanks/0/" + height, amount(16, "ft"));
    }
    change(
        "above the shell",
        "/tanks/0/inletHeight",
        "16 ft",
        t -> {
          set(t, "/tanks/0/entry", JSON.textNode("bottom"));
          set(t, "/tanks/0/inletHeight", amount(16, "ft"));
        });
    change(
        "outlets crossed",
        "/separators/0/waterOutletHeight",
        "a water outlet at 9 ft",
        t -> set(t, "/separators/0/waterOutletHeight", amount(9, "ft")));
    change(
        "outlets crossed",
        "/separators/0/interfaceHeight",
        "an interface at",
        t -> set(t, "/separators/0/oilOutletHeight", amount(2.5, "ft")));
    change(
        "outlets crossed",
        "/separators/0/bottomHeight",
        "a bottom at 20 ft",
        t -> set(t, "/separators/0/bottomHeight", amount(20, "ft")));
    change(
        "range upside down",
        "/separators/0/regulator/rangeLow",
        "a lowest setting of 20 psi",
        t -> {
          set(t, "/separators/0/regulator/rangeLow", amount(20, "psi"));
          set(t, "/separators/0/regulator/rangeHigh", amount(10, "psi"));
        });
    change(
        "no wall",
        "/ownPipes/0/bore",
        "a bore of",
        t -> set(t, "/ownPipes/0/bore", t.at("/ownPipes/0/outside")));
  }

  private void directions() {
    int count = tree().get("lines").size();
    change(
        "runs backwards",
        "/lines/" + count + "/to",
        "back to the separator",
        t -> line(t, "water-leg", id(t, "/tanks/2"), id(t, "/separators/0")));
    change(
        "runs backwards",
        "/lines/" + count + "/to",
        "back to the well",
        t -> line(t, "flow-line", id(t, "/separators/0"), id(t, "/wells/0")));
    change(
        "goes round",
        "/lines/6",
        "in a ring",
        t -> line(t, "overflow", id(t, "/tanks/1"), id(t, "/tanks/0")));
  }

  private void heads() {
    change("wrong version", "/version", "version 3", t -> t.put("version", 3));
    change("wrong version", "/version", "\"1\"", t -> t.put("version", "1"));
    change("wrong version", "/version", "0", t -> t.put("version", 0));
    change("wrong version", "/version", "1.5", t -> t.put("version", 1.5));
    change("wrong version", "/version", "nothing", t -> t.remove("version"));
    change("another format", "/format", "\"drawing\"", t -> t.put("format", "drawing"));
    change("another format", "/format", "nothing", t -> t.remove("format"));
  }

  private static void line(ObjectNode tree, String service, JsonNode from, JsonNode to) {
    ObjectNode line = ((ArrayNode) tree.get("lines")).addObject();
    line.put("id", "odd").put("service", service);
    line.set("from", from);
    line.set("to", to);
    line.put("pipe", "poly-2").put("status", "new");
  }

  private void edit(String kind, String pointer, JsonNode wrong) {
    change(kind, pointer, expected(wrong), t -> set(t, pointer, wrong));
  }

  /** An amount is quoted as it would be typed. */
  private static String expected(JsonNode wrong) {
    boolean amount = wrong.isObject() && wrong.has("unit");
    return LeasePrinter.compact(amount ? wrong.get("value") : wrong);
  }

  private void change(String kind, String pointer, String found, Consumer<ObjectNode> change) {
    ObjectNode tree = tree();
    change.accept(tree);
    byte[] bytes = LeasePrinter.print(tree).getBytes(StandardCharsets.UTF_8);
    files.add(new BrokenFile(kind, bytes, Optional.of(pointer), found));
  }

  private ObjectNode tree() {
    try {
      return (ObjectNode) LeaseMapper.mapper().readTree(good);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** So many places of one kind, by chance but always the same. */
  private List<DocumentPlaces> some(int count, Predicate<DocumentPlaces> wanted) {
    List<DocumentPlaces> all = new ArrayList<>(DocumentPlaces.of(tree(), wanted));
    java.util.Collections.shuffle(all, random);
    return all.subList(0, count);
  }

  private static Dimension dimension(DocumentPlaces p) {
    return QuantityKind.of(p.field().type()).map(QuantityKind::dimension).orElse(null);
  }

  private static ObjectNode amount(double value, String unit) {
    return amount(JSON.numberNode(AmountJson.exact(value)), unit);
  }

  private static ObjectNode amount(JsonNode value, String unit) {
    ObjectNode node = JSON.objectNode();
    node.set("value", value);
    return node.put("unit", unit);
  }

  private static JsonNode id(ObjectNode tree, String pointer) {
    return tree.at(pointer + "/id");
  }

  private static void set(ObjectNode tree, String pointer, JsonNode value) {
    JsonPointer place = JsonPointer.compile(pointer);
    ((ObjectNode) tree.at(place.head())).set(place.last().getMatchingProperty(), value);
  }

  private static void remove(ObjectNode tree, String pointer) {
    JsonPointer place = JsonPointer.compile(pointer);
    ((ObjectNode) tree.at(place.head())).remove(place.last().getMatchingProperty());
  }
}
