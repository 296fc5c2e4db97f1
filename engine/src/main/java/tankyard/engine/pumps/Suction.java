package tankyard.engine.pumps;

import tankyard.engine.fluids.Atmosphere;
import tankyard.engine.fluids.Water;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What drives liquid into a pump.
 *
 * @param airPascals absolute pressure on the tank's liquid
 * @param vapourPascals absolute vapour pressure of the liquid
 * @param liquid gravity
 */
public record Suction(double airPascals, double vapourPascals, Gravity liquid) {
  private static final Source SOURCE =
      Source.definition("net positive suction head available at the pump");

  /** Open tank of water at an altitude: 1976 standard atmosphere below 11 km. */
  public static Suction openTank(Length altitude, Temperature temperature, Gravity liquid) {
    return new Suction(
        Atmosphere.at(altitude.metres()).pascals(),
        Water.vapourPressurePascals(temperature),
        liquid);
  }

  /**
   * Head available.
   *
   * @param levelAbovePump liquid level over the pump's centre; below zero for a lift (feet typed as
   *     a plain number because a length can't be negative)
   * @param friction lost in the line
   * @param acceleration lost in speeding it up
   */
  public Computed<Length> available(
      double levelAbovePumpFeet, Length friction, Length acceleration) {
    double perMetre = liquid.specific() * Water.DENSITY_AT_60F * Water.STANDARD_GRAVITY;
    double pressureFeet = Unit.FOOT.fromSi((airPascals - vapourPascals) / perMetre);
    double feet = pressureFeet + levelAbovePumpFeet - friction.toFeet() - acceleration.toFeet();
    return Computed.of(
        Length.ofFeet(Math.max(0, feet)),
        () ->
            Working.of(
                "Suction head available",
                "h",
                "max(0,(pa-pv)/(0.433101*SG)+z-hf-ha)",
                Unit.FOOT,
                SOURCE,
                Term.of("pa", "air pressure, absolute", Unit.PSI.fromSi(airPascals), Unit.PSI),
                Term.of("pv", "vapour pressure", Unit.PSI.fromSi(vapourPascals), Unit.PSI),
                Term.of("SG", "gravity", liquid, Unit.SPECIFIC_GRAVITY),
                Term.of("z", "level above the pump", levelAbovePumpFeet, Unit.FOOT),
                Term.of("hf", "friction", friction, Unit.FOOT),
                Term.of("ha", "acceleration head", acceleration, Unit.FOOT)));
  }
}
