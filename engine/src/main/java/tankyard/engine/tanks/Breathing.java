package tankyard.engine.tanks;

import tankyard.engine.units.GasRate;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Air and vapour that a tank breathes as its level moves, in cubic feet of air an hour: 5.6 for
 * each barrel an hour drawn, 6 for each filled, or 12 where the liquid flashes below 100 degF, as
 * lease crude does. The simple rule of API Std 2000 before its 6th edition. Heat of the day, flash
 * gas and a dump valve stuck open come on top; local code and the vent's maker decide.
 */
public final class Breathing {
  private static final double IN = 5.6;
  private static final double OUT_VOLATILE = 12;
  private static final double OUT = 6;
  private static final Source SOURCE =
      Source.published("API Std 2000 (simple rule, before the 6th edition)");

  private Breathing() {}

  /** In-breathing at the fastest draw: the truck's pump as a rule. */
  public static Computed<GasRate> in(LiquidRate drawn) {
    return rate("Air drawn in", IN, drawn);
  }

  /** Out-breathing at the fastest filling. */
  public static Computed<GasRate> out(LiquidRate filled, boolean flashesBelow100F) {
    return rate("Air and vapour pushed out", flashesBelow100F ? OUT_VOLATILE : OUT, filled);
  }

  private static Computed<GasRate> rate(String title, double factor, LiquidRate liquid) {
    double barrelsAnHour = liquid.in(Unit.BARREL_PER_HOUR);
    return Computed.of(
        GasRate.of(factor * barrelsAnHour, Unit.CUBIC_FOOT_PER_HOUR),
        () ->
            Working.of(
                title,
                "G",
                "k*Q",
                Unit.CUBIC_FOOT_PER_HOUR,
                SOURCE,
                Term.number("k", "cubic feet an hour for each barrel an hour", factor),
                Term.of("Q", "rate", liquid, Unit.BARREL_PER_HOUR)));
  }
}
