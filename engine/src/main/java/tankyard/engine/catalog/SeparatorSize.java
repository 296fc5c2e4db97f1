package tankyard.engine.catalog;

import java.util.Objects;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.working.Source;

/**
 * A separator as a shop builds it.
 *
 * @param diameter outside
 * @param length seam to seam; the height of a vertical one
 * @param nameplate its rated pressure
 */
public record SeparatorSize(
    String id,
    String name,
    Separator.Shape shape,
    Length diameter,
    Length length,
    Pressure nameplate,
    Source source)
    implements CatalogItem {
  public SeparatorSize {
    Objects.requireNonNull(id, "id");
    if (!(diameter.metres() > 0) || !(length.metres() > 0) || !(nameplate.pascals() > 0)) {
      throw new IllegalArgumentException(
          "Diameter, length and nameplate of " + name + " must be more than zero");
    }
  }

  @Override
  public double order() {
    return diameter.metres() * diameter.metres() * length.metres() + nameplate.toPsi() * 1e-9;
  }
}
