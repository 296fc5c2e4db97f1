package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.ValidationMessage;
import java.util.ArrayList;
import java.util.List;

/** Says in plain words what a schema validator has against a document. */
final class SchemaWords {
  private SchemaWords() {}

  static Complaint complaint(ValidationMessage message) {
    String place = message.getInstanceLocation().toString();
    JsonNode schema = message.getSchemaNode();
    JsonNode found = message.getInstanceNode();
    return switch (message.getType()) {
      case "required" -> missing(place, message.getProperty());
      case "enum" -> new Complaint(place, Complaint.shown(found), "one of " + words(schema));
      case "type" -> new Complaint(place, Complaint.shown(found), types(message));
      case "minimum" -> new Complaint(place, Complaint.shown(found), schema + " or more");
      case "exclusiveMinimum" ->
          new Complaint(place, Complaint.shown(found), "more than " + schema);
      case "maximum" -> new Complaint(place, Complaint.shown(found), schema + " or less");
      case "minItems" ->
          new Complaint(place, "a list of " + found.size(), "a list of " + schema + " or more");
      case "minLength" -> new Complaint(place, Complaint.shown(found), "text that is not empty");
      case "pattern" -> new Complaint(place, Complaint.shown(found), pattern(schema.asText()));
      default -> new Complaint(place, Complaint.shown(found), message.getMessage());
    };
  }

  private static Complaint missing(String owner, String field) {
    return new Complaint(
        Complaint.child(owner, field),
        "nothing",
        "the field \"" + field + "\", which must be there");
  }

  private static String words(JsonNode values) {
    List<String> words = new ArrayList<>();
    values.forEach(v -> words.add(v.toString()));
    return String.join(", ", words);
  }

  private static String types(ValidationMessage message) {
    JsonNode types = message.getSchemaNode();
    JsonNode owner = owner(message);
    if (owner.has("title") && owner.has("examples")) {
      return Complaint.one(owner.get("title").textValue())
          + " such as "
          + examples(owner.get("examples"));
    }
    List<String> words = new ArrayList<>();
    if (types.isTextual()) {
      words.add(type(types.textValue()));
    }
    types.forEach(t -> words.add(type(t.textValue())));
    return String.join(" or ", words);
  }

  /** The part of the schema that has the keyword which complains. */
  private static JsonNode owner(ValidationMessage message) {
    String keyword = message.getSchemaLocation().getFragment().toString();
    return LeaseSchema.root().at(keyword.substring(0, keyword.lastIndexOf('/')));
  }

  private static String examples(JsonNode examples) {
    List<String> words = new ArrayList<>();
    examples.forEach(e -> words.add(LeasePrinter.compact(e)));
    return String.join(" or ", words);
  }

  private static String type(String jsonType) {
    return switch (jsonType) {
      case "string" -> "text in quotes";
      case "number" -> "a number";
      case "integer" -> "a whole number";
      case "array" -> "a list: [ ... ]";
      case "object" -> "an object: { ... }";
      default -> jsonType;
    };
  }

  private static String pattern(String pattern) {
    return switch (pattern) {
      case "^[A-Z]{3}$" -> "three capital letters, such as \"USD\"";
      case "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" -> "a date such as \"2026-07-31\"";
      default -> "text of the form " + pattern;
    };
  }
}
