package tankyard.engine.tanks;

import tankyard.engine.units.Area;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Volume;

/**
 * What a berm must hold.
 *
 * @param inside area between the walls, taken upright
 * @param largestTank its whole shell
 * @param factor on the largest tank; 1 by the federal rule, some states want more
 * @param otherFootprints ground that stands under the other tanks and vessels
 * @param rain that falls inside
 * @param freeboard added on top
 */
public record BermSpec(
    Area inside,
    Volume largestTank,
    Fraction factor,
    Area otherFootprints,
    Length rain,
    Length freeboard) {
  public BermSpec {
    if (!(otherFootprints.squareMetres() < inside.squareMetres())) {
      throw new IllegalArgumentException(
          "Tanks on "
              + otherFootprints.toSquareFeet()
              + " ft2 leave no room inside a berm of "
              + inside.toSquareFeet()
              + " ft2");
    }
  }
}
