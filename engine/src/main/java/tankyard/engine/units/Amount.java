package tankyard.engine.units;

import java.util.Objects;

/**
 * A number with the unit a person typed it in. It keeps what was typed: 12 ft stays 12 ft and does
 * not come back as 3.6576 m.
 *
 * @param value finite; in {@code unit}
 */
public record Amount(double value, Unit unit) {
  public Amount {
    Objects.requireNonNull(unit, "unit");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          value + " " + unit.symbol() + " is not a finite " + unit.dimension().words());
    }
    value = value == 0 ? 0.0 : value; // no negative zero: it prints and compares oddly
  }

  /** The value in the SI unit of its dimension. */
  public double si() {
    return unit.toSi(value);
  }

  public double in(Unit other) {
    if (other.dimension() != unit.dimension()) {
      throw new IllegalArgumentException(
          "A " + unit.dimension().words() + " can't be given in " + other.symbol());
    }
    return other == unit ? value : other.fromSi(si());
  }

  Amount require(Dimension dimension) {
    if (unit.dimension() != dimension) {
      throw new IllegalArgumentException(
          "A "
              + dimension.words()
              + " is wanted, not a "
              + unit.dimension().words()
              + " ("
              + value
              + " "
              + unit.symbol()
              + ")");
    }
    return this;
  }
}
