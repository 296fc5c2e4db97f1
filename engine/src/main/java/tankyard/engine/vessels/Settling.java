package tankyard.engine.vessels;

import java.util.List;
import tankyard.engine.fluids.Water;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Time;
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
  /** Drops of water that a separator is usually asked to let fall out of its oil. */
  public static final Length WATER_ASKED = Length.of(0.5, Unit.MILLIMETRE);

  /** Drops of oil that it is usually asked to let rise out of its water. */
  public static final Length OIL_ASKED = Length.of(0.2, Unit.MILLIMETRE);

  /** Where both sizes are from. */
  public static final Source ASKED =
      Source.published(
          "Arnold & Stewart, Surface Production Operations vol. 1 (3rd ed.), Example 5-1:"
              + " drops of 500 and 200 micron; Stokes 1851");

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

  /**
   * The smallest drop that crosses a layer while the layer's liquid stays: any smaller one leaves
   * with it. The liquid is taken to move through the layer as one block.
   *
   * @param layer how deep it is
   * @param stays how long its liquid stays
   * @param falling gravity of the heavier of the two liquids
   * @param rising gravity of the lighter
   * @param around the liquid the drop crosses: its gravity, one of the two, and its viscosity
   */
  public static Computed<Length> smallest(
      Length layer, Time stays, Gravity falling, Gravity rising, Around around) {
    double difference = (falling.specific() - rising.specific()) * Water.DENSITY_AT_60F;
    if (!(difference > 0 && stays.seconds() > 0)) {
      throw new IllegalArgumentException(
          "Drops part only where the falling liquid is the heavier and the layer stays a while: "
              + falling.specific()
              + " and "
              + rising.specific()
              + " SG, "
              + stays.toMinutes()
              + " min");
    }
    double speed = layer.metres() / stays.seconds();
    double metres =
        Math.sqrt(
            18
                * around.viscosity().pascalSeconds()
                * speed
                / (Water.STANDARD_GRAVITY * difference));
    double reynolds =
        speed
            * metres
            * around.gravity().specific()
            * Water.DENSITY_AT_60F
            / around.viscosity().pascalSeconds();
    return Computed.of(
            Length.of(Unit.MILLIMETRE.fromSi(metres), Unit.MILLIMETRE),
            () ->
                Working.of(
                    "Smallest drop that crosses the layer in time",
                    "d",
                    "sqrt(H/t*mu/(107.1413*(SGf-SGr)))",
                    Unit.MILLIMETRE,
                    Source.published("Stokes 1851"),
                    Term.of("H", "depth of the layer", layer, Unit.FOOT),
                    Term.of("t", "how long its liquid stays", stays, Unit.MINUTE),
                    Term.of("mu", "its viscosity", around.viscosity(), Unit.CENTIPOISE),
                    Term.of("SGf", "gravity of what falls", falling, Unit.SPECIFIC_GRAVITY),
                    Term.of("SGr", "gravity of what rises", rising, Unit.SPECIFIC_GRAVITY)))
        .with(cautions(reynolds));
  }

  /** A liquid that drops of another cross. */
  public record Around(Gravity gravity, Viscosity viscosity) {}

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
