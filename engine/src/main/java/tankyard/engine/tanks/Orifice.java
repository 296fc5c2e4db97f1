package tankyard.engine.tanks;

import tankyard.engine.fluids.Water;

/**
 * A hole or a short opening: {@code Q = Cd A sqrt(2 g h)}. How fast a hole spills, how long a tank
 * takes to empty through it, how two tanks level out. SI.
 *
 * @param areaM2 of the opening
 * @param discharge Cd; about 0.6 for a sharp edge
 */
public record Orifice(double areaM2, double discharge) {
  public Orifice {
    if (!(areaM2 > 0 && discharge > 0 && discharge <= 1)) {
      throw new IllegalArgumentException(
          "A hole needs an area above zero and a Cd of 0 to 1: " + areaM2 + " m2, " + discharge);
    }
  }

  public static Orifice round(double diameterM, double discharge) {
    return new Orifice(Math.PI / 4 * diameterM * diameterM, discharge);
  }

  /** Flow under a head of its own liquid. */
  public double flowM3PerS(double headM) {
    return discharge * areaM2 * Math.sqrt(2 * Water.STANDARD_GRAVITY * headM);
  }

  /** Seconds for the level above the hole to fall from one height to another. */
  public double secondsToFall(double tankAreaM2, double fromM, double toM) {
    return 2 * tankAreaM2 * (Math.sqrt(fromM) - Math.sqrt(toM)) / flowM3PerS(1);
  }

  /** Seconds for two joined tanks to go from one difference in level to a smaller one. */
  public double secondsToLevel(double areaOneM2, double areaTwoM2, double fromM, double toM) {
    double together = areaOneM2 * areaTwoM2 / (areaOneM2 + areaTwoM2);
    return secondsToFall(together, fromM, toM);
  }
}
