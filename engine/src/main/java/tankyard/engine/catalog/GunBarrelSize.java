package tankyard.engine.catalog;

import java.util.Objects;
import tankyard.engine.units.Length;
import tankyard.engine.working.Source;

/** A gun barrel as a shop builds it: a tall tank with its leg yet to be cut. */
public record GunBarrelSize(
    String id, String name, Material material, Length diameter, Length shellHeight, Source source)
    implements CatalogItem {
  public GunBarrelSize {
    Objects.requireNonNull(id, "id");
    if (!(diameter.metres() > 0) || !(shellHeight.metres() > 0)) {
      throw new IllegalArgumentException(
          "Diameter and height of " + name + " must be more than zero");
    }
  }

  @Override
  public double order() {
    return diameter.metres() * diameter.metres() * shellHeight.metres();
  }
}
