package tankyard.engine.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.tanks.BermSpec;
import tankyard.engine.terrain.Outline;
import tankyard.engine.units.Area;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * A berm against the largest tank inside it, a gun barrel counted as one, and the rain.
 *
 * @param inside ground between its walls
 * @param needed height of its walls
 * @param toBuild the same up to the next quarter foot
 * @param dirt in a berm of the height that was typed, or as it is to build where none was
 * @param built height as typed, if it was
 * @param largestTankId the tank or gun barrel that must be held
 */
public record BermResult(
    String bermId,
    Area inside,
    Computed<Length> needed,
    Length toBuild,
    Computed<Volume> dirt,
    Optional<Length> built,
    String largestTankId) {

  /** Of every berm that stays and has a tank inside. One that crosses itself has no inside. */
  public static List<BermResult> of(Lease lease) {
    return lease.berms().stream().flatMap(berm -> of(lease, berm).stream()).toList();
  }

  /** Empty where no tank fits inside it, it goes away, or its sides cross. */
  public static Optional<BermResult> of(Lease lease, Berm berm) {
    Outline outline = Outlines.of(berm);
    if (!berm.status().stays() || outline.crossesItself()) {
      return Optional.empty();
    }
    List<Shell> inside =
        Shell.of(lease).stream().filter(s -> Outlines.holds(outline, s.at())).toList();
    double covered = inside.stream().mapToDouble(Shell::footprintM2).sum();
    return inside.stream()
        .max(Comparator.comparingDouble(Shell::cubicMetres))
        .filter(largest -> covered - largest.footprintM2() < outline.areaM2())
        .map(largest -> result(berm, outline, largest, covered - largest.footprintM2()));
  }

  private static BermResult result(Berm berm, Outline outline, Shell largest, double othersM2) {
    Area inside = squareFeet(outline.areaM2());
    BermSpec spec =
        new BermSpec(
            inside,
            Volume.ofCubicFeet(Unit.CUBIC_FOOT.fromSi(largest.cubicMetres())),
            berm.largestTankFactor().orElse(Fraction.ofRatio(1)),
            squareFeet(othersM2),
            berm.rain().orElse(Defaults.BERM_RAIN),
            berm.freeboard().orElse(Defaults.FREEBOARD));
    Computed<Length> needed = tankyard.engine.tanks.Berm.height(spec);
    Length toBuild = Length.ofFeet(Rounding.UP.toParts(needed.value().toFeet(), 4));
    return new BermResult(
        berm.id(),
        inside,
        needed,
        toBuild,
        dirt(outline, berm.height().orElse(toBuild)),
        berm.height(),
        largest.id());
  }

  /** Whether somebody typed a rain for it, were it none. */
  public boolean countsRain(Lease lease) {
    return lease.berms().stream().anyMatch(b -> b.id().equals(bermId) && b.rain().isPresent());
  }

  /** Dirt in the berm where no tank asks for a height. */
  public static Computed<Volume> dirt(Berm berm, Length height) {
    return dirt(Outlines.of(berm), height);
  }

  private static Computed<Volume> dirt(Outline outline, Length height) {
    return tankyard.engine.tanks.Berm.dirt(LaidLine.feet(outline.lengthM()), height);
  }

  private static Area squareFeet(double squareMetres) {
    return Area.ofSquareFeet(Unit.SQUARE_FOOT.fromSi(squareMetres));
  }
}
