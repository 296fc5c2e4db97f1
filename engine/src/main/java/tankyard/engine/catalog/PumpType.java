package tankyard.engine.catalog;

import java.util.Objects;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Source;

/**
 * An injection pump with its motor.
 *
 * @param rate while it runs
 * @param highest discharge pressure
 * @param efficiency pump and drive together
 */
public record PumpType(
    String id,
    String name,
    LiquidRate rate,
    Pressure highest,
    Power motor,
    Fraction efficiency,
    Source source)
    implements CatalogItem {
  public PumpType {
    Objects.requireNonNull(id, "id");
    if (!(efficiency.ratio() > 0) || efficiency.ratio() > 1) {
      throw new IllegalArgumentException(
          "The efficiency of " + name + " must lie between 0 and 1: " + efficiency.ratio());
    }
  }

  @Override
  public double order() {
    return motor.watts() + rate.si();
  }
}
