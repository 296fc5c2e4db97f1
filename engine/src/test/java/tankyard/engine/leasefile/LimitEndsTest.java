package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tankyard.engine.api.Tankyard;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PriceList;
import tankyard.engine.lease.Lease;

/**
 * Whatever a lease file may hold is answered: each field with a limit is put at both ends of it in
 * an example that has the thing it belongs to. Rules between fields may still refuse the file, in
 * words; a fault of the program they must not leave.
 */
class LimitEndsTest {
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");
  private static final Path DEMO =
      Path.of("../catalog-demo/src/main/resources/tankyard/catalogdemo/demo.lease.json");
  private static final Tankyard TANKYARD =
      new Tankyard(Catalog.empty(), PriceList.empty(), LocalDate.of(2026, 1, 1));

  /** A field somewhere in an example. */
  private record Place(String example, JsonNode file, String owner) {}

  private final Map<String, Place> places = places();

  @Test
  void everyLimitBelongsToAFieldOfSomeExample() {
    assertThat(places.keySet()).containsAll(Limits.table().keySet());
  }

  @TestFactory
  Stream<DynamicTest> bothEnds() {
    return new TreeMap<>(Limits.table())
        .entrySet().stream()
            .filter(e -> places.containsKey(e.getKey()))
            .flatMap(
                e ->
                    Stream.of(e.getValue().least(), e.getValue().most())
                        .map(end -> test(e.getKey(), end, e.getValue())));
  }

  @Test
  void aMixtureMustTurnOverSomewhere() {
    assertThat(refusal("inversion", 0)).contains("0.01 to 0.99");
    assertThat(refusal("inversion", 1)).contains("0.01 to 0.99");
  }

  @Test
  void viscositiesThatNoOilHasAreRefusedInWords() {
    Object thickerWarm = List.of(point(40, 180), point(70, 900));
    assertThat(refusal("oilViscosity", thickerWarm)).contains("oil thins as it warms");
    Object onlyCold = List.of(point(-10, 900));
    assertThat(refusal("oilViscosity", onlyCold)).contains("type a second point");
  }

  private static Map<String, Object> point(double fahrenheit, double centipoise) {
    return Map.of(
        "temperature", Map.of("value", fahrenheit, "unit", "°F"),
        "viscosity", Map.of("value", centipoise, "unit", "cP"));
  }

  private static String refusal(String field, Object value) {
    try {
      JsonNode file =
          LeaseMapper.mapper().readTree(EXAMPLES.resolve("p6-black-wax.lease.json").toFile());
      ((ObjectNode) file.get("fluids")).set(field, LeaseMapper.mapper().valueToTree(value));
      byte[] bytes = LeaseMapper.mapper().writeValueAsBytes(file);
      LeaseFiles.read("test", new ByteArrayInputStream(bytes));
      return "taken";
    } catch (LeaseFileException refused) {
      return refused.getMessage();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private DynamicTest test(String field, double end, Limit limit) {
    Place place = places.get(field);
    String name = field + " = " + end + " in " + place.example();
    return DynamicTest.dynamicTest(name, () -> answered(place, field, end, limit));
  }

  private static void answered(Place place, String field, double end, Limit limit)
      throws IOException {
    JsonNode file = place.file().deepCopy();
    ObjectNode amount = LeaseMapper.mapper().createObjectNode();
    amount.put("value", end).put("unit", limit.unit().symbol());
    ObjectNode owner = (ObjectNode) file.at(place.owner());
    String name = field.substring(field.indexOf('.') + 1);
    owner.set(name, limit.unit() == tankyard.engine.units.Unit.ONE ? amount.get("value") : amount);
    Lease lease;
    try {
      byte[] bytes = LeaseMapper.mapper().writeValueAsBytes(file);
      lease = LeaseFiles.read("test", new ByteArrayInputStream(bytes));
    } catch (LeaseFileException refused) {
      assertThat(refused.problems()).isNotEmpty();
      return;
    }
    assertThatCode(() -> TANKYARD.answer(lease))
        .as("%s at %s in %s", field, end, place.example())
        .doesNotThrowAnyException();
  }

  /** Of every field with a limit, where an example has it or could have it. */
  private static Map<String, Place> places() {
    Map<String, Place> has = new LinkedHashMap<>();
    Map<String, Place> could = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      List<Path> paths = new ArrayList<>(files.filter(LimitEndsTest::isLease).sorted().toList());
      paths.add(DEMO);
      for (Path path : paths) {
        JsonNode file = LeaseMapper.mapper().readTree(path.toFile());
        object(path.getFileName().toString(), file, "", Lease.class, has, could);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    could.forEach(has::putIfAbsent);
    return has;
  }

  private static boolean isLease(Path path) {
    return path.getFileName().toString().endsWith(".lease.json");
  }

  private static void object(
      String example,
      JsonNode file,
      String at,
      Class<?> type,
      Map<String, Place> has,
      Map<String, Place> could) {
    JsonNode object = file.at(at);
    for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
      String key = type.getSimpleName() + "." + field.name();
      could.putIfAbsent(key, new Place(example, file, at));
      if (object.has(field.name())) {
        has.putIfAbsent(key, new Place(example, file, at));
        for (String inside : field.isRecord() ? children(object, at, field) : List.<String>of()) {
          object(example, file, inside, field.type(), has, could);
        }
      }
    }
  }

  private static List<String> children(JsonNode object, String at, RecordShape.Field field) {
    String place = at + "/" + field.name();
    if (!field.list()) {
      return List.of(place);
    }
    List<String> items = new ArrayList<>();
    for (int i = 0; i < object.get(field.name()).size(); i++) {
      items.add(place + "/" + i);
    }
    return items;
  }
}
