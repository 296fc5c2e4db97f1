package tankyard.engine.valves;

import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Pressure lost in a valve: {@code dp = SG (Q / Cv)^2}, psi and gpm. A float valve does not stand
 * wide open: its Cv at work is the wide-open one times the share of travel it works at (a straight
 * line, as a plug with a linear trim has).
 */
public final class ValveLoss {
  /** Half travel; common practice, no source. */
  public static final Fraction USUAL_TRAVEL = Fraction.ofPercent(50);

  private static final Source SOURCE =
      Source.definition("flow coefficient: gpm of water at 1 psi; Q = Cv sqrt(dp/SG)");

  private ValveLoss() {}

  /** The Cv at a share of full travel. */
  public static Cv atTravel(Cv wideOpen, Fraction travel) {
    if (!(travel.ratio() > 0 && travel.ratio() <= 1)) {
      throw new IllegalArgumentException(
          "A valve works between 0 and 100 % of its travel, not at " + travel.toPercent() + " %");
    }
    return Cv.ofGpmPerRootPsi(wideOpen.toGpmPerRootPsi() * travel.ratio());
  }

  public static FlowLaw law(Cv cv, Liquid liquid) {
    return FlowLaw.quadratic(liquid.densityKgPerM3() / (cv.av() * cv.av()));
  }

  /** The loss at one rate, with its working. */
  public static Computed<Pressure> at(Cv cv, LiquidRate rate, Gravity liquid) {
    double ratio = rate.toGpm() / cv.toGpmPerRootPsi();
    return Computed.of(
        Pressure.ofPsi(liquid.specific() * ratio * ratio),
        () ->
            Working.of(
                "Lost in the valve",
                "dp",
                "SG*(Q/Cv)^2",
                Unit.PSI,
                SOURCE,
                Term.of("SG", "gravity of the liquid", liquid, Unit.SPECIFIC_GRAVITY),
                Term.of("Q", "rate", rate, Unit.GALLON_PER_MINUTE),
                Term.of("Cv", "valve coefficient as it works", cv, Unit.CV)));
  }

  /** Velocity heads in a pipe of that bore: {@code K = 2 A^2 / Av^2}. */
  public static double toK(Cv cv, double boreM) {
    double area = Math.PI / 4 * boreM * boreM;
    double ratio = area / cv.av();
    return 2 * ratio * ratio;
  }
}
