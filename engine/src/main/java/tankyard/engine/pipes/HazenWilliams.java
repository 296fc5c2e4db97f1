package tankyard.engine.pipes;

import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Water;

/**
 * Water in a pipe by Hazen and Williams: {@code v = 0.849 C R^0.63 S^0.54} (SI; 1.318 in feet), R a
 * quarter of the bore, S the head lost per length. For water near room temperature in turbulent
 * flow; it knows no viscosity, so oil and cold emulsion are not its business.
 *
 * @param c 140 polyethylene, 150 fibreglass, 120 new steel
 */
public record HazenWilliams(double lengthM, double boreM, double c, double specificGravity)
    implements FlowLaw {
  /** 1.318 (ft, s) turned into metres: 1.318 * 0.3048^0.37. */
  static final double SI = 1.318 * Math.pow(0.3048, 0.37);

  private static final double EXPONENT = 1 / 0.54;

  public HazenWilliams {
    if (!(lengthM >= 0 && boreM > 0 && c > 0 && specificGravity > 0)) {
      throw new IllegalArgumentException(
          "Hazen-Williams needs a length, a bore, C and a gravity above zero: "
              + lengthM
              + " m, "
              + boreM
              + " m, "
              + c
              + ", "
              + specificGravity);
    }
  }

  @Override
  public Drop drop(double flowM3PerS) {
    double q = Math.abs(flowM3PerS);
    double pascals = specificGravity * Water.DENSITY_AT_60F * Water.STANDARD_GRAVITY * headM(q);
    double slope = q == 0 ? 0 : EXPONENT * pascals / q;
    return new Drop(Math.copySign(pascals, flowM3PerS), slope);
  }

  private double headM(double q) {
    double velocity = q / (Math.PI / 4 * boreM * boreM);
    return lengthM * Math.pow(velocity / (SI * c * Math.pow(boreM / 4, 0.63)), EXPONENT);
  }

  /**
   * The field man's form: psi = 4.52 Q^1.85 L / (C^1.85 d^4.87), gpm, ft and inches, for fresh
   * water (as a fire-protection note gives it).
   */
  public static double fieldPsi(double gpm, double feet, double boreInches, double c) {
    return 4.52 * Math.pow(gpm, 1.85) * feet / (Math.pow(c, 1.85) * Math.pow(boreInches, 4.87));
  }
}
