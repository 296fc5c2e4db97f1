package tankyard.engine.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.tanks.BermSpec;
import tankyard.engine.units.Area;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * The berm against the largest tank inside it, a gun barrel counted as one, and the rain.
 *
 * @param needed height of its walls
 * @param toBuild the same up to the next quarter foot
 * @param dirt in a berm as high as it is drawn, or as it is to build where no height is
 * @param built height as drawn, if it is
 * @param largestTankId the tank or gun barrel that must be held
 */
public record BermResult(
    Computed<Length> needed,
    Length toBuild,
    Computed<Volume> dirt,
    Optional<Length> built,
    String largestTankId) {

  /** Empty where no berm is drawn, or no tank fits inside it. */
  public static Optional<BermResult> of(Lease lease) {
    return lease.site().berm().flatMap(berm -> of(lease, berm));
  }

  private static Optional<BermResult> of(Lease lease, Berm berm) {
    List<Shell> inside = Shell.of(lease).stream().filter(s -> berm.contains(s.at())).toList();
    double covered = inside.stream().mapToDouble(Shell::footprintM2).sum();
    return inside.stream()
        .max(Comparator.comparingDouble(Shell::cubicMetres))
        .filter(largest -> covered - largest.footprintM2() < insideM2(berm))
        .map(largest -> result(berm, largest, covered - largest.footprintM2()));
  }

  private static BermResult result(Berm berm, Shell largest, double othersM2) {
    BermSpec spec =
        new BermSpec(
            Area.ofSquareFeet(Unit.SQUARE_FOOT.fromSi(insideM2(berm))),
            Volume.ofCubicFeet(Unit.CUBIC_FOOT.fromSi(largest.cubicMetres())),
            berm.largestTankFactor().orElse(Fraction.ofRatio(1)),
            Area.ofSquareFeet(Unit.SQUARE_FOOT.fromSi(othersM2)),
            berm.rain().orElse(Length.ofInches(0)),
            berm.freeboard().orElse(Length.ofFeet(0)));
    Computed<Length> needed = tankyard.engine.tanks.Berm.height(spec);
    Length toBuild = Length.ofFeet(Rounding.UP.toParts(needed.value().toFeet(), 4));
    return new BermResult(
        needed,
        toBuild,
        tankyard.engine.tanks.Berm.dirt(berm.length(), berm.width(), berm.height().orElse(toBuild)),
        berm.height(),
        largest.id());
  }

  private static double insideM2(Berm berm) {
    return berm.length().metres() * berm.width().metres();
  }
}
