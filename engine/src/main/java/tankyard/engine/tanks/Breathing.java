package tankyard.engine.tanks;

import tankyard.engine.units.GasRate;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Air and vapour that a tank breathes, in cubic feet of air an hour, by the simple rule of API Std
 * 2000 before its 6th edition: 5.6 for each barrel an hour drawn, 6 for each filled, or 12 where
 * the liquid flashes below 100 degF, as lease crude does; and as the day cools and warms the tank,
 * 1 for each barrel of its shell, 0.6 outwards over water. Gas that comes in comes on top. Fire is
 * left out; local code and the vent's maker decide.
 */
public final class Breathing {
  private static final double IN = 5.6;
  private static final double OUT_VOLATILE = 12;
  private static final double OUT = 6;
  private static final double WARMS = 0.6;
  private static final Source SOURCE =
      Source.published(
          "API Std 2000 (simple rule, before the 6th edition); for the heat of the day table 2A of"
              + " the 5th, from memory");

  private Breathing() {}

  /** In-breathing at the fastest draw, the truck's pump as a rule, while the tank cools. */
  public static Computed<GasRate> in(LiquidRate drawn, Volume shell) {
    return Computed.of(
        scfh(IN * drawn.in(Unit.BARREL_PER_HOUR) + shell.toBarrels()),
        () ->
            Working.of(
                "Air drawn in",
                "G",
                "k*Q+V",
                Unit.CUBIC_FOOT_PER_HOUR,
                SOURCE,
                factor(IN),
                Term.of("Q", "fastest draw", drawn, Unit.BARREL_PER_HOUR),
                Term.of("V", "shell, one cubic foot an hour a barrel", shell, Unit.BARREL)));
  }

  /**
   * Out-breathing at the fastest filling while the tank warms.
   *
   * @param gas that comes in with the liquid, or past a dump valve
   */
  public static Computed<GasRate> out(
      LiquidRate filled, Volume shell, boolean flashesBelow100F, Computed<GasRate> gas) {
    double k = flashesBelow100F ? OUT_VOLATILE : OUT;
    double c = flashesBelow100F ? 1 : WARMS;
    double gasScfh = gas.value().in(Unit.CUBIC_FOOT_PER_HOUR);
    return Computed.of(
        scfh(k * filled.in(Unit.BARREL_PER_HOUR) + c * shell.toBarrels() + gasScfh),
        () ->
            Working.of(
                    "Air and vapour pushed out",
                    "G",
                    "k*Q+c*V+Gg",
                    Unit.CUBIC_FOOT_PER_HOUR,
                    SOURCE,
                    factor(k),
                    Term.of("Q", "fastest filling", filled, Unit.BARREL_PER_HOUR),
                    Term.number("c", "cubic feet an hour for each barrel of shell", c),
                    Term.of("V", "shell", shell, Unit.BARREL),
                    Term.of("Gg", "gas that comes in", gasScfh, Unit.CUBIC_FOOT_PER_HOUR))
                .from(java.util.List.of(gas.working())));
  }

  private static Term factor(double k) {
    return Term.number("k", "cubic feet an hour for each barrel an hour", k);
  }

  private static GasRate scfh(double value) {
    return GasRate.of(value, Unit.CUBIC_FOOT_PER_HOUR);
  }
}
