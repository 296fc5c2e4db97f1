package tankyard.engine.vessels;

import java.util.List;
import tankyard.engine.fluids.Water;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How fast a drop sinks or rises in another liquid by Stokes: {@code v = g (density difference) d^2
 * / (18 mu)}. For drops so slow that their Reynolds number stays below about 1; faster ones are
 * held back more than this says.
 */
public final class Settling {
  private static final double STOKES_UP_TO = 1;

  private Settling() {}

  /** Metres per second, positive where the drop sinks. */
  static double stokes(
      double dropM, double dropDensity, double liquidDensity, double liquidViscosityPaS) {
    return Water.STANDARD_GRAVITY
        * (dropDensity - liquidDensity)
        * dropM
        * dropM
        / (18 * liquidViscosityPaS);
  }

  /** A drop's speed; positive where it sinks, negative where it rises. */
  public static Computed<Speed> of(
      Length drop, Gravity ofDrop, Gravity ofLiquid, Viscosity viscosity) {
    double metres =
        stokes(
            drop.metres(),
            ofDrop.specific() * Water.DENSITY_AT_60F,
            ofLiquid.specific() * Water.DENSITY_AT_60F,
            viscosity.pascalSeconds());
    double reynolds =
        Math.abs(metres)
            * drop.metres()
            * ofLiquid.specific()
            * Water.DENSITY_AT_60F
            / viscosity.pascalSeconds();
    return Computed.of(
            Speed.of(Unit.FOOT_PER_MINUTE.fromSi(metres), Unit.FOOT_PER_MINUTE),
            () -> working(drop, ofDrop, ofLiquid, viscosity))
        .with(cautions(reynolds));
  }

  private static Working working(
      Length drop, Gravity ofDrop, Gravity ofLiquid, Viscosity viscosity) {
    return Working.of(
        "Speed of a drop",
        "v",
        "107.1413*(SGd-SGl)*d^2/mu",
        Unit.FOOT_PER_MINUTE,
        Source.published("Stokes 1851"),
        Term.of("SGd", "gravity of the drop", ofDrop, Unit.SPECIFIC_GRAVITY),
        Term.of("SGl", "gravity of the liquid around it", ofLiquid, Unit.SPECIFIC_GRAVITY),
        Term.of("d", "diameter of the drop", drop, Unit.MILLIMETRE),
        Term.of("mu", "viscosity of the liquid around it", viscosity, Unit.CENTIPOISE));
  }

  private static List<Caution> cautions(double reynolds) {
    if (reynolds <= STOKES_UP_TO) {
      return List.of();
    }
    return List.of(
        new Caution(
            "drop-too-fast",
            "The drop's Reynolds number is "
                + Figures.significant(reynolds, 2)
                + ", above the 1 that Stokes' law holds for: it moves slower than this."));
  }
}
