package tankyard.app.field;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import tankyard.engine.units.Amount;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/**
 * A number with its unit, typed in any unit of its dimension. A bare number is taken in the unit
 * that stands in the field, or else in the field's own unit, or else in the unit system's.
 */
public final class AmountEntry<R> extends TypedEntry<R> {
  private final Part<R, Optional<Amount>> part;
  private final QuantityKind kind;
  private final boolean optional;
  private Function<R, String> assumed = whole -> "not known";
  private Optional<Unit> fieldUnit = Optional.empty();
  private Optional<Unit> metricUnit = Optional.empty();
  private Optional<Amount> current = Optional.empty();

  AmountEntry(
      EntryContext<R> context,
      String id,
      String label,
      String why,
      Part<R, Optional<Amount>> part,
      QuantityKind kind,
      boolean optional) {
    super(context, id, label, why);
    this.part = part;
    this.kind = kind;
    this.optional = optional;
  }

  /** What is taken while the field is empty, for example "24 h". */
  public AmountEntry<R> assumed(String value) {
    return assumedFrom(whole -> value + " assumed");
  }

  /** What stands in the empty field, in full: "read off the map: 102 ft". */
  public AmountEntry<R> assumedFrom(Function<R, String> words) {
    assumed = words;
    return this;
  }

  /** The unit of a bare number where the unit system's would be odd: inches for a bore. */
  public AmountEntry<R> unit(Unit field, Unit metric) {
    fieldUnit = Optional.of(field);
    metricUnit = Optional.of(metric);
    return this;
  }

  @Override
  public boolean mayBeEmpty() {
    return optional;
  }

  @Override
  public boolean isNumber() {
    return true;
  }

  public Dimension dimension() {
    return kind.dimension();
  }

  @Override
  String print(R whole) {
    current = part.in(whole);
    return current.map(AmountText::print).orElse("");
  }

  @Override
  String promptFor(R whole) {
    return optional ? assumed.apply(whole) : "needed";
  }

  @Override
  UnaryOperator<R> read(String typed) {
    if (optional && typed.isBlank()) {
      return whole -> part.with(whole, Optional.empty());
    }
    Amount amount = AmountText.parse(typed, kind.dimension(), bare());
    kind.quantity(amount); // refuses what can't be, such as a rate below zero
    return whole -> part.with(whole, Optional.of(amount));
  }

  private Unit bare() {
    boolean metric = context().host().units() == UnitSystem.METRIC;
    return current
        .map(Amount::unit)
        .or(() -> metric ? metricUnit : fieldUnit)
        .orElseGet(() -> context().host().units().unit(kind.dimension()));
  }
}
