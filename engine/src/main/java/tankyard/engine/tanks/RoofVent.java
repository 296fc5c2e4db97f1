package tankyard.engine.tanks;

import tankyard.engine.units.GasRate;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What stands across a tank's vent while it breathes: the ounces at which it lifts, and those that
 * drive the air through its bore, {@code p = p0 + rho/2 (Q / (Cd A))^2} with air of 60 °F at sea
 * level and Cd 0.6 for a short opening. At ounces air hardly changes its volume. A maker's flow
 * curve counts more than this: many vents are not wide open until well past the ounces they lift
 * at.
 *
 * @param bore clear bore of vent valve and neck
 * @param lifts pressure or vacuum at which it opens; zero for an open pipe
 */
public record RoofVent(Length bore, Pressure lifts) {
  private static final double DISCHARGE = 0.6;

  /** Pounds per cubic foot, at 60 °F and 14.696 psia. */
  private static final double AIR = 0.07636;

  private static final double AIR_KG_PER_M3 = Unit.POUND_PER_CUBIC_FOOT.toSi(AIR);

  private static final Source SOURCE =
      Source.memory("opening with a discharge coefficient of 0.6, air at 60 °F and sea level");

  public RoofVent {
    if (!(bore.metres() > 0)) {
      throw new IllegalArgumentException("A vent needs a bore above zero, not " + bore.toInches());
    }
  }

  /** What the tank's roof feels while so much air goes through. */
  public Computed<Pressure> across(GasRate air) {
    double areaM2 = Math.PI / 4 * bore.metres() * bore.metres();
    double speed = air.standardCubicMetresPerSecond() / (DISCHARGE * areaM2);
    double pascals = lifts.pascals() + AIR_KG_PER_M3 / 2 * speed * speed;
    return Computed.of(
        Pressure.of(Unit.OUNCE_PER_SQUARE_INCH.fromSi(pascals), Unit.OUNCE_PER_SQUARE_INCH),
        () -> working(air));
  }

  private Working working(GasRate air) {
    return Working.of(
        "Across the vent",
        "p",
        "p0+16/144*rho/(2*32.17405)*(Q/(3600*Cd*pi/4*(d/12)^2))^2",
        Unit.OUNCE_PER_SQUARE_INCH,
        SOURCE,
        Term.of("p0", "lifts at", lifts, Unit.OUNCE_PER_SQUARE_INCH),
        Term.of("rho", "density of air", AIR, Unit.POUND_PER_CUBIC_FOOT),
        Term.of("Q", "air through it", air, Unit.CUBIC_FOOT_PER_HOUR),
        Term.number("Cd", "discharge coefficient", DISCHARGE),
        Term.of("d", "bore", bore, Unit.INCH));
  }

  /**
   * The least bore at which no more than the room stands across a vent past the ounces it lifts at.
   *
   * @param room above zero
   */
  public static Computed<Length> leastBore(GasRate air, Pressure room) {
    double speed = Math.sqrt(2 * room.pascals() / AIR_KG_PER_M3);
    double areaM2 = air.standardCubicMetresPerSecond() / (DISCHARGE * speed);
    double metres = Math.sqrt(4 / Math.PI * areaM2);
    return Computed.of(
        Length.of(Unit.FOOT.fromSi(metres), Unit.FOOT),
        () ->
            Working.of(
                "Least bore of the vent",
                "d",
                "sqrt(4*Q/(pi*3600*Cd*sqrt(2*32.17405*r*144/16/rho)))",
                Unit.FOOT,
                SOURCE,
                Term.of("Q", "air through it", air, Unit.CUBIC_FOOT_PER_HOUR),
                Term.number("Cd", "discharge coefficient", DISCHARGE),
                Term.of("r", "roof holds, less what it lifts at", room, Unit.OUNCE_PER_SQUARE_INCH),
                Term.of("rho", "density of air", AIR, Unit.POUND_PER_CUBIC_FOOT)));
  }
}
