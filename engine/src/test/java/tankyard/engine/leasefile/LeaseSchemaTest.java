package tankyard.engine.leasefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.Amount;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;

class LeaseSchemaTest {
  /**
   * Fields that a file may leave out although the record always has them: they have a usual value.
   */
  private static final Set<String> USUAL = Set.of("practice", "prices");

  @Test
  void thePublishedSchemaIsTheOneTheReaderUses() throws Exception {
    Path published = Path.of("../docs/schema/" + LeaseSchema.RESOURCE);

    assertThat(LeaseSchema.class.getResourceAsStream(LeaseSchema.RESOURCE))
        .hasBinaryContent(Files.readAllBytes(published));
  }

  @Test
  void theSchemaIsOneByItsOwnStandard() {
    JsonSchema standard =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaLocation.of(SchemaId.V202012));

    assertThat(standard.validate(LeaseSchema.root())).isEmpty();
    assertThat(standard.validate(LeaseMapper.mapper().createObjectNode().put("type", "lenght")))
        .isNotEmpty();
  }

  @Test
  void theSchemaHasTheFieldsOfEveryRecordAndNoOthers() {
    documentRecords()
        .forEach(
            (type, schema) ->
                assertThat(names(schema.get("properties")))
                    .as(type.getSimpleName())
                    .isEqualTo(new TreeSet<>(RecordShape.of(type).fields().keySet())));
  }

  @Test
  void theSchemaDemandsWhatARecordCannotDoWithout() {
    documentRecords()
        .forEach(
            (type, schema) -> {
              Set<String> required = new TreeSet<>();
              schema.path("required").forEach(n -> required.add(n.textValue()));
              for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
                boolean needed =
                    !field.optional()
                        && !field.list()
                        && field.type() != String.class
                        && !USUAL.contains(field.name());
                if (needed) {
                  assertThat(required).as(type.getSimpleName()).contains(field.name());
                }
                boolean any = field.list() && !properties(schema, field).has("minItems");
                if (field.optional() || any) {
                  assertThat(required).as(type.getSimpleName()).doesNotContain(field.name());
                }
              }
            });
  }

  private static JsonNode properties(JsonNode schema, RecordShape.Field field) {
    return schema.path("properties").path(field.name());
  }

  @Test
  void everyWordOfEveryEnumIsInTheSchema() {
    documentRecords()
        .forEach(
            (type, schema) -> {
              for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
                if (field.type().isEnum()) {
                  List<String> words = new ArrayList<>();
                  for (Object constant : field.type().getEnumConstants()) {
                    words.add(LeaseMapper.word((Enum<?>) constant));
                  }
                  List<String> listed = new ArrayList<>();
                  resolve(schema.get("properties").get(field.name()))
                      .get("enum")
                      .forEach(n -> listed.add(n.textValue()));
                  assertThat(listed).as(type + "." + field.name()).isEqualTo(words);
                }
              }
            });
  }

  @Test
  void everyQuantityListsTheUnitsItTakes() {
    documentRecords()
        .forEach(
            (type, schema) -> {
              for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
                QuantityKind.of(field.type())
                    .ifPresent(
                        kind -> {
                          List<String> listed = new ArrayList<>();
                          resolve(schema.get("properties").get(field.name()))
                              .at("/properties/unit/examples")
                              .forEach(n -> listed.add(n.textValue()));
                          assertThat(listed).isEqualTo(Unit.symbols(kind.dimension()));
                        });
              }
            });
  }

  @Test
  void everyExampleInTheSchemaIsTaken() {
    documentRecords()
        .forEach(
            (type, schema) -> {
              for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
                QuantityKind.of(field.type())
                    .ifPresent(
                        kind ->
                            resolve(schema.get("properties").get(field.name()))
                                .get("examples")
                                .forEach(e -> taken(e, kind)));
              }
            });
  }

  private static void taken(JsonNode example, QuantityKind<?> kind) {
    Quantity quantity = kind.make().apply(AmountJson.read(example, kind.dimension()));
    assertThat(quantity.typed().value()).isPositive();
  }

  static List<String> keywordsInTheSchema() {
    Set<String> keywords = new TreeSet<>();
    collectKeywords(LeaseSchema.root(), keywords);
    return List.copyOf(keywords);
  }

  /** A keyword without words of its own would show people the validator's message. */
  @ParameterizedTest
  @MethodSource("keywordsInTheSchema")
  void everyKeywordHasPlainWordsOrNeverComplains(String keyword) {
    Set<String> explained =
        Set.of(
            "type", "required", "enum", "minimum", "maximum", "minItems", "minLength", "pattern");
    Set<String> silent =
        Set.of(
            "$schema",
            "$id",
            "$ref",
            "$defs",
            "title",
            "description",
            "examples",
            "properties",
            "items",
            "const");
    assertThat(explained.contains(keyword) || silent.contains(keyword)).isTrue();
  }

  @Test
  void everyQuantityOfTheDocumentHasALimitOfItsOwnDimension() {
    Set<String> quantities = new TreeSet<>();
    for (Class<?> type : documentRecords().keySet()) {
      for (RecordComponent component : type.getRecordComponents()) {
        RecordShape.Field field = RecordShape.of(type).fields().get(component.getName());
        Optional<QuantityKind<?>> kind =
            Optional.ofNullable(field).flatMap(f -> QuantityKind.of(f.type()));
        if (kind.isPresent()) {
          quantities.add(type.getSimpleName() + "." + field.name());
          Limit limit = Limits.of(type, field.name()).orElseThrow();
          assertThat(limit.unit().dimension()).isEqualTo(kind.get().dimension());
          assertThat(kind.get().make().apply(new Amount(limit.least(), limit.unit()))).isNotNull();
          assertThat(kind.get().make().apply(new Amount(limit.most(), limit.unit()))).isNotNull();
        }
      }
    }
    assertThat(Limits.table().keySet()).containsExactlyInAnyOrderElementsOf(quantities);
  }

  /** Every record of the document with its part of the schema. */
  private static Map<Class<?>, JsonNode> documentRecords() {
    Map<Class<?>, JsonNode> found = new LinkedHashMap<>();
    Deque<Class<?>> open = new ArrayDeque<>(List.of(Lease.class));
    found.put(Lease.class, withoutHead());
    while (!open.isEmpty()) {
      Class<?> type = open.remove();
      for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
        if (field.isRecord() && !found.containsKey(field.type())) {
          JsonNode schema = resolve(found.get(type).get("properties").get(field.name()));
          found.put(field.type(), field.list() ? resolve(schema.get("items")) : schema);
          open.add(field.type());
        }
      }
    }
    return found;
  }

  private static JsonNode withoutHead() {
    JsonNode root = LeaseSchema.root().deepCopy();
    ((com.fasterxml.jackson.databind.node.ObjectNode) root.get("properties"))
        .remove(List.of("format", "version"));
    return root;
  }

  private static JsonNode resolve(JsonNode schema) {
    return schema.has("$ref")
        ? LeaseSchema.root().at(schema.get("$ref").textValue().substring(1))
        : schema;
  }

  private static Set<String> names(JsonNode node) {
    Set<String> names = new TreeSet<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static void collectKeywords(JsonNode schema, Set<String> keywords) {
    schema
        .fields()
        .forEachRemaining(
            field -> {
              keywords.add(field.getKey());
              if (field.getKey().equals("properties") || field.getKey().equals("$defs")) {
                field.getValue().forEach(child -> collectKeywords(child, keywords));
              } else if (field.getKey().equals("items")) {
                collectKeywords(field.getValue(), keywords);
              }
            });
  }
}
