package tankyard.engine.catalog;

import java.util.Objects;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Source;

/**
 * A tank size.
 *
 * @param nominal what it is called, which is not what it holds
 * @param diameter outside
 * @param overflowHeight of the overflow connection above the bottom
 * @param walkwayHeight of the walkway above the bottom
 * @param working what its standard says it holds in use
 * @param pressure most it stands; tanks hold ounces
 * @param vacuum most it stands
 */
public record TankSize(
    String id,
    String name,
    Material material,
    Volume nominal,
    Length diameter,
    Length shellHeight,
    Length overflowHeight,
    Optional<Length> walkwayHeight,
    Optional<Volume> working,
    Optional<Pressure> pressure,
    Optional<Pressure> vacuum,
    Source source)
    implements CatalogItem {
  public TankSize {
    Objects.requireNonNull(id, "id");
    if (!(diameter.metres() > 0) || !(shellHeight.metres() > 0)) {
      throw new IllegalArgumentException(
          "Diameter and height of " + name + " must be more than zero");
    }
    if (!(overflowHeight.metres() > 0) || overflowHeight.metres() > shellHeight.metres()) {
      throw new IllegalArgumentException(
          "The overflow of " + name + " must lie between its bottom and the top of its shell");
    }
  }

  /** What stands in one foot of height, the wall left out. */
  public Volume perFoot() {
    double feet = diameter.toFeet();
    return Volume.ofBarrels(Volume.ofCubicFeet(Math.PI / 4 * feet * feet).toBarrels());
  }

  /** The shell filled to the top. */
  public Volume fullShell() {
    return Volume.ofBarrels(perFoot().toBarrels() * shellHeight.toFeet());
  }

  @Override
  public double order() {
    return nominal.toBarrels() + shellHeight.toFeet() * 1e-3;
  }
}
