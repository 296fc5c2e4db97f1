package tankyard.engine.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Tank;
import tankyard.engine.tanks.BermSpec;
import tankyard.engine.units.Area;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/**
 * The berm against the largest tank inside it and the rain.
 *
 * @param needed height of its walls
 * @param built height as drawn, if it is
 * @param largestTankId the tank that must be held
 */
public record BermResult(Computed<Length> needed, Optional<Length> built, String largestTankId) {

  /** Empty where no berm is drawn, or no tank fits inside it. */
  public static Optional<BermResult> of(Survey survey) {
    return survey.lease().site().berm().flatMap(berm -> of(survey, berm));
  }

  private static Optional<BermResult> of(Survey survey, Berm berm) {
    List<Tank> inside =
        survey.lease().tanks().stream()
            .filter(t -> t.status().stays() && isInside(t.at(), berm))
            .toList();
    double covered = inside.stream().mapToDouble(BermResult::footprintM2).sum();
    return inside.stream()
        .max(Comparator.comparingDouble(BermResult::cubicMetres))
        .filter(largest -> covered - footprintM2(largest) < insideM2(berm))
        .map(largest -> result(berm, largest, covered - footprintM2(largest)));
  }

  private static BermResult result(Berm berm, Tank largest, double othersM2) {
    BermSpec spec =
        new BermSpec(
            Area.ofSquareFeet(Unit.SQUARE_FOOT.fromSi(insideM2(berm))),
            Volume.ofCubicFeet(Unit.CUBIC_FOOT.fromSi(cubicMetres(largest))),
            berm.largestTankFactor().orElse(Fraction.ofRatio(1)),
            Area.ofSquareFeet(Unit.SQUARE_FOOT.fromSi(othersM2)),
            berm.rain().orElse(Length.ofInches(0)),
            berm.freeboard().orElse(Length.ofFeet(0)));
    return new BermResult(tankyard.engine.tanks.Berm.height(spec), berm.height(), largest.id());
  }

  private static double insideM2(Berm berm) {
    return berm.length().metres() * berm.width().metres();
  }

  private static boolean isInside(MapPoint at, Berm berm) {
    double east = at.east().metres() - berm.corner().east().metres();
    double north = at.north().metres() - berm.corner().north().metres();
    return east >= 0
        && east <= berm.length().metres()
        && north >= 0
        && north <= berm.width().metres();
  }

  private static double footprintM2(Tank tank) {
    return Math.PI / 4 * Math.pow(tank.diameter().metres(), 2);
  }

  private static double cubicMetres(Tank tank) {
    return footprintM2(tank) * tank.shellHeight().metres();
  }
}
