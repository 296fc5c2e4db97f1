package tankyard.engine.fluids;

import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;

/**
 * A pressure above a vacuum. A type of its own because gas laws need it and every gauge shows the
 * other kind.
 *
 * @param pascals above zero
 */
public record AbsolutePressure(double pascals) {
  /** Base pressure for gas volumes, 14.696 psia. */
  public static final AbsolutePressure STANDARD = ofPsia(14.696);

  public AbsolutePressure {
    if (!(pascals > 0 && Double.isFinite(pascals))) {
      throw new IllegalArgumentException(
          "An absolute pressure must be above zero, not "
              + Unit.PSI.fromSi(pascals)
              + " psia; a gauge pressure has the air's to be added.");
    }
  }

  public static AbsolutePressure ofPsia(double psia) {
    return new AbsolutePressure(Unit.PSI.toSi(psia));
  }

  /** What a gauge in that air shows as {@code gauge}. */
  public static AbsolutePressure of(Pressure gauge, AbsolutePressure air) {
    return new AbsolutePressure(gauge.pascals() + air.pascals);
  }

  public double toPsia() {
    return Unit.PSI.fromSi(pascals);
  }

  /** What a gauge in that air shows, Pa; below zero for a vacuum. */
  public double gaugePascals(AbsolutePressure air) {
    return pascals - air.pascals;
  }
}
