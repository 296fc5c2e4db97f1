package tankyard.catalogdemo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of the results' JSON names every field that is written, and no other. */
class ResultFieldsTest {
  private static final Path PAGE = Path.of("../docs/results-json.md");
  private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\|");

  @TempDir Path folder;

  @Test
  void everyFieldStandsOnThePageAndEveryRowOfThePageIsWritten() throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    Set<String> written = new TreeSet<>();
    for (String file : Typed.examples()) {
      walk("", mapper.readTree(Typed.run("size", "--json", file).out()), written);
    }
    Typed.run("demo", "--out", folder.toString());
    walk("", mapper.readTree(folder.resolve("result.json").toFile()), written);

    walk("", mapper.readTree(Typed.run("size", "--json", unusual(mapper)).out()), written);
    walk("", mapper.readTree(Typed.run("size", "--json", asked(mapper)).out()), written);
    walk("", mapper.readTree(Typed.run("size", "--json", flooding(mapper)).out()), written);

    Set<String> onThePage = new TreeSet<>();
    Matcher row = ROW.matcher(Files.readString(PAGE));
    while (row.find()) {
      onThePage.add(row.group(1));
    }
    Set<String> notOnThePage = new TreeSet<>(written);
    notOnThePage.removeAll(onThePage);
    Set<String> neverWritten = new TreeSet<>(onThePage);
    neverWritten.removeAll(written);
    assertThat(notOnThePage).isEmpty();
    assertThat(neverWritten).isEmpty();
  }

  /** A pump whose maker's figure is known, and oil that would be heated by the wells' own gas. */
  private String asked(ObjectMapper mapper) throws Exception {
    String pumped =
        Typed.examples().stream().filter(f -> f.contains("p5-prairie-flood")).findFirst().get();
    ObjectNode lease = (ObjectNode) mapper.readTree(new File(pumped));
    ((ObjectNode) lease.get("injectionPumps").get(0))
        .set("suctionNeeded", mapper.readTree("{\"value\": 8, \"unit\": \"ft\"}"));
    ((ObjectNode) lease.get("injectionPumps").get(0))
        .put("plunger", "1.25 in")
        .put("stroke", "2.5 in")
        .put("sheave", "18 in");
    lease.withObject("/practice").put("treatAt", "120 °F");
    ((ObjectNode) lease.get("injectionWells").get(0)).put("otherRate", "100 bbl/d");
    ((ObjectNode) lease.get("wells").get(0)).put("gas", "2 Mcf/d");
    Path file = folder.resolve("asked.lease.json");
    mapper.writeValue(file.toFile(), lease);
    return file.toString();
  }

  /**
   * What no example has: a berm with a height, a landmark, a quote for nothing, a separator with no
   * oil leg.
   */
  private String unusual(ObjectMapper mapper) throws Exception {
    ObjectNode lease = (ObjectNode) mapper.readTree(new File(Typed.examples().get(0)));
    lease.set(
        "berms",
        mapper.readTree(
            """
            [{"id": "BM1", "name": "Berm", "status": "have", "height": "2 ft", "corners": [
              {"east": "-500 ft", "north": "-500 ft"}, {"east": "4500 ft", "north": "-500 ft"},
              {"east": "4500 ft", "north": "4500 ft"}, {"east": "-500 ft", "north": "4500 ft"}]}]
            """));
    lease.set(
        "landmarks",
        mapper.readTree(
            """
            [{"id": "LM1", "name": "House", "status": "have", "what": "house", "setback": "200 ft",
              "corners": [{"east": "-900 ft", "north": "0 ft"}]}]
            """));
    lease.set(
        "prices",
        mapper.readTree(
            """
            {"quotes": [{"id": "none", "text": "Nothing drawn", "covers": ["power"], "basis": "foot",
              "price": 1, "currency": "USD", "vendor": "nobody"}]}
            """));
    ArrayNode lines = (ArrayNode) lease.get("lines");
    for (int i = lines.size() - 1; i >= 0; i--) {
      if (lines.get(i).get("service").asText().equals("oil-leg")) {
        lines.remove(i);
      }
    }
    Path file = folder.resolve("unusual.lease.json");
    mapper.writeValue(file.toFile(), lease);
    return file.toString();
  }

  /** A gun barrel whose leg passes less than comes. */
  private String flooding(ObjectMapper mapper) throws Exception {
    String example =
        Typed.examples().stream().filter(f -> f.contains("p4-")).findFirst().orElseThrow();
    ObjectNode lease = (ObjectNode) mapper.readTree(new File(example));
    ((ObjectNode) lease.at("/gunBarrels/0")).put("legPipe", "steel-2");
    ((ObjectNode) lease.at("/wells/0")).put("water", "600 bbl/d");
    Path file = folder.resolve("flooding.lease.json");
    mapper.writeValue(file.toFile(), lease);
    return file.toString();
  }

  /** Paths to values; a quantity is one value, and limits and settings have one shape each. */
  private static void walk(String path, JsonNode node, Set<String> found) {
    boolean quantity = node.has("value") && node.has("unit") && !path.startsWith("workings");
    if (node.isObject() && !quantity) {
      node.fieldNames().forEachRemaining(f -> walk(joined(path, f), node.get(f), found));
    } else if (node.isArray()) {
      node.forEach(element -> walk(path + "[]", element, found));
    } else {
      found.add(path);
    }
  }

  private static String joined(String path, String field) {
    if (path.equals("bill.perThing")) {
      return path + ".ID";
    }
    if (path.equals("windows[]")
        && (field.equals("least") || field.equals("most") || field.equals("tankAlone"))) {
      return "LIMIT";
    }
    if (path.equals("windows[]") && (field.equals("needed") || field.equals("allowed"))) {
      return "LIMITS";
    }
    if (path.equals("windows[]") && (field.equals("recommended") || field.equals("setting"))) {
      return "SETTING";
    }
    String start = path.equals("LIMITS[]") ? "LIMIT" : path;
    return start.isEmpty() ? field : start + "." + field;
  }
}
