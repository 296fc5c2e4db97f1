package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;

/**
 * What one check has against a document, before it is known where that stands in the text.
 *
 * @param place JSON pointer
 */
record Complaint(String place, String found, String accepted) {
  private static final int LONGEST = 60;

  /** What stands at a place, cut short enough to print. */
  static String shown(JsonNode node) {
    String text = isAmount(node) ? asTyped(node) : LeasePrinter.compact(node);
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 3) + "...";
  }

  private static boolean isAmount(JsonNode node) {
    return node.size() == 2
        && node.path(AmountJson.VALUE).isNumber()
        && node.path(AmountJson.UNIT).isTextual();
  }

  private static String asTyped(JsonNode amount) {
    return LeasePrinter.compact(amount.get(AmountJson.VALUE))
        + " "
        + amount.get(AmountJson.UNIT).textValue();
  }

  /** The noun with its article. */
  static String one(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ") + noun;
  }

  /** The pointer to a field of the object at {@code owner}. */
  static String child(String owner, String field) {
    return owner + "/" + field.replace("~", "~0").replace("/", "~1");
  }

  JsonPointer pointer() {
    return JsonPointer.compile(place);
  }
}
