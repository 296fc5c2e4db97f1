package tankyard.engine.pipes;

import tankyard.engine.units.HeatLoss;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How liquid comes to the temperature of the ground along a buried line: {@code T - Tg = (T0 - Tg)
 * exp(-x / Lc)} with {@code Lc = C / (U pi D)}, C the heat the flow carries past for each degree.
 * The balance of a steady flow against a loss that is even along the line and in step with the
 * difference; heat from friction is left out (a psi lost warms oil by less than 0.01 degF).
 *
 * <p>Heat held by a barrel: 150 Btu/degF for oil, 350 for water, the figures treaters are sized by
 * (common practice, from memory; brine holds up to 7 % less, oil of 26 degAPI 138 by Cragoe's 1929
 * formula as recalled). Next to the loss U, known to a factor of two at best, that is fine.
 *
 * @param oilM3PerS past any point
 * @param waterM3PerS past any point
 * @param loss to the ground, on the outside area of the pipe
 * @param outsideM diameter
 */
public record LineCooling(double oilM3PerS, double waterM3PerS, HeatLoss loss, double outsideM) {
  private static final double BTU_PER_BARREL_OIL = 150;
  private static final double BTU_PER_BARREL_WATER = 350;

  /** J/K in a Btu per degF (international table), over m3 in a barrel. */
  private static final double SI = 1055.05585262 * 1.8 / Unit.BARREL.toSi(1);

  private static final Source SOURCE =
      Source.commonPractice(
          "steady heat balance; 150 Btu/°F for a barrel of oil and 350 of water, as treaters are"
              + " sized");

  /** Heat that so much oil and water carry past for each degree, W/K. */
  public static double wattsPerKelvin(double oilM3PerS, double waterM3PerS) {
    return SI * (BTU_PER_BARREL_OIL * oilM3PerS + BTU_PER_BARREL_WATER * waterM3PerS);
  }

  public double wattsPerKelvin() {
    return wattsPerKelvin(oilM3PerS, waterM3PerS);
  }

  /** The cooling length: over it the difference to the ground falls to 37 %. */
  public double lengthM() {
    return wattsPerKelvin() / (loss.wattsPerSquareMetreKelvin() * Math.PI * outsideM);
  }

  /**
   * Whether it comes to the ground's temperature at all: kept from losing any heat it never does.
   */
  public boolean losesHeat() {
    return loss.wattsPerSquareMetreKelvin() > 0;
  }

  /** What is left of a difference to the ground after a distance, in the flow's direction. */
  public double left(double difference, double distanceM) {
    double length = lengthM();
    return length > 0 ? difference * Math.exp(-distanceM / length) : 0;
  }

  /** The distance over which a difference to the ground falls to another, smaller one. */
  public double distanceM(double from, double to) {
    return lengthM() * Math.log(from / to);
  }

  public Computed<Length> length() {
    return Computed.of(
        Length.ofFeet(Unit.FOOT.fromSi(lengthM())),
        () ->
            Working.of(
                "Cooling length of the line",
                "Lc",
                "(150*Qo+350*Qw)/24/(U*pi*D/12)",
                Unit.FOOT,
                SOURCE,
                Term.of("Qo", "oil", barrels(oilM3PerS), Unit.BARREL_PER_DAY),
                Term.of("Qw", "water", barrels(waterM3PerS), Unit.BARREL_PER_DAY),
                Term.of(
                    "U", "heat lost to the ground", loss, Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT),
                Term.of("D", "outside of the pipe", Unit.INCH.fromSi(outsideM), Unit.INCH)));
  }

  private static LiquidRate barrels(double m3PerS) {
    return LiquidRate.ofBarrelsPerDay(Unit.BARREL_PER_DAY.fromSi(m3PerS));
  }
}
