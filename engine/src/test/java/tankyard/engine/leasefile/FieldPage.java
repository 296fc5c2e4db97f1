package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.lease.Lease;

/** Writes docs/lease-file-fields.md from the schema, the records and the limits. */
final class FieldPage {
  private static final String HEAD =
      """
      # Every field of a lease file

      Written by `FieldPageTest` from `schema/lease-2.schema.json`, the records and the limits; a test fails
      when it is out of date. To write it anew:

          mvn -pl engine test -Dtest=FieldPageTest -Dfields.write=true

      What the format is like is told in [lease-file.md](lease-file.md). Fields in **bold** must be there. The
      limits catch slips of the keyboard or of the unit; they are set wide by judgement, without a source, and say
      nothing about good design.
      """;

  private final StringBuilder page = new StringBuilder(HEAD);
  private final Set<Class<?>> done = new HashSet<>();

  private FieldPage() {}

  static String write() {
    FieldPage page = new FieldPage();
    page.object("The lease", Lease.class, LeaseSchema.root());
    return page.page.toString();
  }

  private void object(String title, Class<?> type, JsonNode schema) {
    if (!done.add(type)) {
      return;
    }
    page.append("\n## ").append(title).append("\n\n");
    page.append(schema.path("description").asText()).append("\n\n");
    page.append("| field | holds | limits | meaning |\n| --- | --- | --- | --- |\n");
    List<RecordShape.Field> inside = new ArrayList<>();
    for (RecordShape.Field field : RecordShape.of(type).fields().values()) {
      JsonNode own = schema.get("properties").get(field.name());
      row(type, field, own, isRequired(schema, field));
      if (field.isRecord()) {
        inside.add(field);
      }
    }
    for (RecordShape.Field field : inside) {
      JsonNode own = resolved(schema.get("properties").get(field.name()));
      object(title(field.type()), field.type(), field.list() ? resolved(own.get("items")) : own);
    }
  }

  private void row(Class<?> owner, RecordShape.Field field, JsonNode own, boolean required) {
    String name = "`" + field.name() + "`";
    page.append("| ")
        .append(required ? "**" + name + "**" : name)
        .append(" | ")
        .append(field.list() ? "list of " + holds(field, own.get("items")) : holds(field, own))
        .append(" | ")
        .append(Limits.of(owner, field.name()).map(Limit::words).orElse(""))
        .append(" | ")
        .append(own.has("description") ? own.get("description").asText() : described(field, own))
        .append(" |\n");
  }

  private static String holds(RecordShape.Field field, JsonNode own) {
    JsonNode schema = resolved(own);
    if (field.type().isEnum()) {
      List<String> words = new ArrayList<>();
      schema.get("enum").forEach(w -> words.add("`" + w.textValue() + "`"));
      return String.join(", ", words);
    }
    if (field.isRecord()) {
      String title = title(field.type());
      return "[" + title.toLowerCase(java.util.Locale.ROOT) + "](#" + anchor(title) + ")";
    }
    Optional<QuantityKind<?>> kind = QuantityKind.of(field.type());
    if (kind.isPresent()) {
      return schema.get("title").textValue();
    }
    return switch (schema.get("type").textValue()) {
      case "string" -> schema.path("pattern").asText().contains("[0-9]") ? "date" : "text";
      case "integer" -> "whole number";
      default -> "number";
    };
  }

  private static String described(RecordShape.Field field, JsonNode own) {
    JsonNode schema = resolved(field.list() ? own.get("items") : own);
    return field.isRecord() || field.type().isEnum() ? schema.path("description").asText() : "";
  }

  private static boolean isRequired(JsonNode schema, RecordShape.Field field) {
    for (JsonNode name : schema.path("required")) {
      if (name.textValue().equals(field.name())) {
        return true;
      }
    }
    return false;
  }

  private static JsonNode resolved(JsonNode schema) {
    return schema.has("$ref")
        ? LeaseSchema.root().at(schema.get("$ref").textValue().substring(1))
        : schema;
  }

  /** "Injection pump" for InjectionPump. */
  private static String title(Class<?> type) {
    String words = type.getSimpleName().replaceAll("(?<=.)([A-Z])", " $1");
    return words.charAt(0) + words.substring(1).toLowerCase(java.util.Locale.ROOT);
  }

  private static String anchor(String title) {
    return title.toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
  }
}
