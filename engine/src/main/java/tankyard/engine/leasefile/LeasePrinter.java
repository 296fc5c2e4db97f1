package tankyard.engine.leasefile;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;

/**
 * Prints a JSON tree so that a change of one value changes one line: a field to a line, but a
 * quantity, a place on the map and a list of words on one line each.
 */
final class LeasePrinter {
  private static final int PLAIN_DIGITS = 20;

  /** What such an object starts with; it is one thing to the eye. */
  private static final Set<String> ONE_LINE_STARTS = Set.of(AmountJson.VALUE, "east", "fitting");

  private final StringBuilder out = new StringBuilder();

  private LeasePrinter() {}

  static String print(JsonNode tree) {
    LeasePrinter printer = new LeasePrinter();
    printer.node(tree, 0);
    return printer.out.append('\n').toString();
  }

  static String compact(JsonNode tree) {
    LeasePrinter printer = new LeasePrinter();
    printer.flat(tree);
    return printer.out.toString();
  }

  private void node(JsonNode node, int indent) {
    if (isOneLine(node)) {
      flat(node);
      return;
    }
    boolean object = node.isObject();
    out.append(object ? '{' : '[');
    Iterator<Map.Entry<String, JsonNode>> fields = node.fields();
    Iterator<JsonNode> elements = node.elements();
    String comma = "";
    while (elements.hasNext()) {
      out.append(comma);
      newLine(indent + 1);
      if (object) {
        Map.Entry<String, JsonNode> field = fields.next();
        text(field.getKey());
        out.append(": ");
      }
      node(elements.next(), indent + 1);
      comma = ",";
    }
    newLine(indent);
    out.append(object ? '}' : ']');
  }

  private static boolean isOneLine(JsonNode node) {
    if (!node.isContainerNode() || node.isEmpty()) {
      return true;
    }
    if (node.isObject()) {
      return ONE_LINE_STARTS.contains(node.fieldNames().next());
    }
    for (JsonNode element : node) {
      if (element.isContainerNode()) {
        return false;
      }
    }
    return true;
  }

  private void flat(JsonNode node) {
    if (!node.isContainerNode()) {
      scalar(node);
      return;
    }
    boolean object = node.isObject();
    out.append(object ? '{' : '[');
    Iterator<Map.Entry<String, JsonNode>> fields = node.fields();
    String comma = "";
    for (JsonNode element : node) {
      out.append(comma);
      if (object) {
        text(fields.next().getKey());
        out.append(": ");
      }
      flat(element);
      comma = ", ";
    }
    out.append(object ? '}' : ']');
  }

  private void newLine(int indent) {
    out.append('\n').append("  ".repeat(indent));
  }

  private void scalar(JsonNode node) {
    if (node.isTextual()) {
      text(node.textValue());
    } else if (node.isNumber()) {
      out.append(number(node.decimalValue()));
    } else {
      out.append(node.asText());
    }
  }

  private static String number(BigDecimal number) {
    boolean plain = number.scale() >= 0 && number.scale() <= PLAIN_DIGITS;
    return plain ? number.toPlainString() : number.toString();
  }

  private void text(String words) {
    out.append('"').append(JsonStringEncoder.getInstance().quoteAsString(words)).append('"');
  }
}
