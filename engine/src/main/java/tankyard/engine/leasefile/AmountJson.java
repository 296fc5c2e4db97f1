package tankyard.engine.leasefile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import tankyard.engine.units.Amount;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/**
 * A typed amount in JSON: {@code {"value": 12, "unit": "ft"}}. Text such as {@code "12 ft"} is read
 * too, for people who write by hand. A plain ratio has no unit and is a bare number.
 */
final class AmountJson {
  static final String VALUE = "value";
  static final String UNIT = "unit";

  /** What we write ourselves is found at once; other names take a search. */
  private static final Map<Dimension, Map<String, Unit>> SYMBOLS =
      Arrays.stream(Unit.values())
          .collect(
              Collectors.groupingBy(
                  Unit::dimension, Collectors.toMap(Unit::symbol, Function.identity())));

  private AmountJson() {}

  static JsonNode write(Amount amount) {
    BigDecimal number = exact(amount.value());
    if (amount.unit().symbol().isEmpty()) {
      return JsonNodeFactory.instance.numberNode(number);
    }
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put(VALUE, number);
    node.put(UNIT, amount.unit().symbol());
    return node;
  }

  /** The shortest digits that read back as the same number. */
  static BigDecimal exact(double value) {
    return new BigDecimal(Figures.exact(value));
  }

  /**
   * Reads an amount.
   *
   * @throws IllegalArgumentException saying what was found and what is accepted
   */
  static Amount read(JsonNode node, Dimension dimension) {
    if (node.isTextual()) {
      return text(node.textValue(), dimension);
    }
    boolean ratio = dimension == Dimension.FRACTION;
    if (node.isNumber() && ratio) {
      return new Amount(node.doubleValue(), Unit.ONE);
    }
    JsonNode value = node.path(VALUE);
    if (!node.isObject() || !value.isNumber()) {
      throw new IllegalArgumentException(node + " is no " + dimension.words());
    }
    JsonNode unit = node.path(UNIT);
    return new Amount(
        value.doubleValue(),
        unit.isMissingNode() && ratio ? Unit.ONE : unit(unit.asText(), dimension));
  }

  private static Amount text(String typed, Dimension dimension) {
    Unit bare = dimension == Dimension.FRACTION ? Unit.ONE : null;
    // A number alone would be taken in some unit or other; in a file nobody could tell which.
    if (bare == null && typed.matches("[-+0-9.,/\\s]*([eE][-+]?[0-9]+)?")) {
      throw new IllegalArgumentException("\"" + typed + "\" has no unit");
    }
    return AmountText.parse(typed, dimension, bare == null ? anyUnit(dimension) : bare);
  }

  private static Unit anyUnit(Dimension dimension) {
    return Unit.find(Unit.symbols(dimension).get(0), dimension).orElseThrow();
  }

  private static Unit unit(String symbol, Dimension dimension) {
    Unit known = SYMBOLS.get(dimension).get(symbol);
    return Optional.ofNullable(known)
        .or(() -> Unit.find(symbol, dimension))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + symbol + "\" is no unit of " + dimension.words()));
  }
}
