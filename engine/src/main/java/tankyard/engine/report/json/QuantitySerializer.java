package tankyard.engine.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Set;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** A quantity as value and unit, on one line. */
final class QuantitySerializer extends StdSerializer<Quantity> {
  private static final long serialVersionUID = 1L;
  private static final Set<Unit> KEPT =
      EnumSet.of(Unit.OUNCE_PER_SQUARE_INCH, Unit.CUBIC_FOOT_PER_HOUR);

  QuantitySerializer() {
    super(Quantity.class);
  }

  @Override
  public void serialize(Quantity quantity, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeRawValue("{" + fields(quantity) + "}");
  }

  /** Value and unit without the brackets around them. */
  private static String fields(Quantity quantity) {
    return fields(quantity, unit(quantity));
  }

  static String fields(Quantity quantity, Unit unit) {
    return "\"value\": " + Digits.of(quantity.in(unit)) + ", \"unit\": \"" + unit.symbol() + "\"";
  }

  /**
   * A time in hours would hide that it was asked in minutes or days; what a roof breathes and feels
   * is spoken of in its own units.
   */
  private static Unit unit(Quantity quantity) {
    Unit typed = quantity.typed().unit();
    return quantity.dimension() == Dimension.TIME || KEPT.contains(typed)
        ? typed
        : UnitSystem.FIELD.unit(quantity.dimension());
  }
}
