package tankyard.engine.catalog;

import java.util.Objects;
import java.util.Optional;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Source;

/**
 * A back-pressure regulator.
 *
 * @param rangeLow lowest setting of its spring
 * @param rangeHigh highest setting of its spring
 * @param buildUp how far the pressure rises above the set point at full flow
 */
public record RegulatorType(
    String id,
    String name,
    NominalSize nominal,
    Pressure rangeLow,
    Pressure rangeHigh,
    Optional<Pressure> buildUp,
    Optional<Cv> cv,
    Source source)
    implements CatalogItem {
  public RegulatorType {
    Objects.requireNonNull(id, "id");
    if (!(rangeLow.pascals() < rangeHigh.pascals())) {
      throw new IllegalArgumentException("The spring range of " + name + " is upside down");
    }
  }

  @Override
  public double order() {
    return nominal.inches() + rangeHigh.toPsi() * 1e-6;
  }
}
