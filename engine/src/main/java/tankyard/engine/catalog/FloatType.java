package tankyard.engine.catalog;

import java.util.Objects;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.working.Source;

/**
 * A float ball with its lever.
 *
 * @param weight of the whole ball against fresh water, as it comes; most can be loaded
 * @param lever pull at the seat over pull at the ball
 */
public record FloatType(
    String id, String name, Length diameter, Gravity weight, Fraction lever, Source source)
    implements CatalogItem {
  public FloatType {
    Objects.requireNonNull(id, "id");
    if (!(diameter.metres() > 0) || !(lever.ratio() > 0)) {
      throw new IllegalArgumentException(
          "Diameter and lever of " + name + " must be more than zero");
    }
  }

  @Override
  public double order() {
    return diameter.metres();
  }
}
