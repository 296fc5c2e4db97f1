package tankyard.engine.pumps;

import tankyard.engine.fluids.Water;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rotation;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The head it costs to speed up the liquid in a suction line at every stroke: {@code h = L v N C /
 * (k g)}, feet, ft/s and rpm. It comes on top of friction and is often the larger.
 *
 * @param constant C, by the kind of pump
 * @param liquid k, by how much the liquid gives
 */
public record Acceleration(double constant, double liquid) {
  /** As a note on reciprocating pumps gives them. */
  public static final double TRIPLEX = 0.066;

  public static final double DUPLEX_SINGLE_ACTING = 0.2;
  public static final double SIMPLEX_SINGLE_ACTING = 0.4;
  public static final double QUINTUPLEX = 0.04;

  /** Water; from memory. */
  public static final double WATER = 1.5;

  private static final Source SOURCE =
      Source.published("note on acceleration head of reciprocating pumps; k from memory");

  public Acceleration {
    if (!(constant > 0 && liquid > 0)) {
      throw new IllegalArgumentException("C and k must be above zero: " + constant + ", " + liquid);
    }
  }

  public static Acceleration triplexOnWater() {
    return new Acceleration(TRIPLEX, WATER);
  }

  /** Head lost in a line of that real length at that average velocity. */
  public Computed<Length> head(Length line, Speed velocity, Rotation speed) {
    double metres =
        line.metres()
            * velocity.metresPerSecond()
            * speed.toRpm()
            * constant
            / (liquid * Water.STANDARD_GRAVITY);
    return Computed.of(
        Length.ofFeet(Unit.FOOT.fromSi(metres)),
        () ->
            Working.of(
                "Acceleration head in the suction line",
                "h",
                "L*v*N*C/(k*32.17405)",
                Unit.FOOT,
                SOURCE,
                Term.of("L", "length of the line", line, Unit.FOOT),
                Term.of("v", "velocity in it", velocity, Unit.FOOT_PER_SECOND),
                Term.of("N", "speed of the pump", speed, Unit.RPM),
                Term.number("C", "constant of the pump", constant),
                Term.number("k", "constant of the liquid", liquid)));
  }

  /**
   * The same from first principles for one plunger on a long rod: {@code h = L/g A/a w^2 r}, the
   * highest, at the end of the stroke. SI.
   *
   * @param areaRatio plunger over pipe
   * @param crankM half the stroke
   */
  public static double onePlungerM(
      double lineM, double areaRatio, double radiansPerSecond, double crankM) {
    return lineM
        / Water.STANDARD_GRAVITY
        * areaRatio
        * radiansPerSecond
        * radiansPerSecond
        * crankM;
  }
}
