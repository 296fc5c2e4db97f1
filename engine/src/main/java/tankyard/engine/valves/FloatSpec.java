package tankyard.engine.valves;

import java.util.Objects;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;

/**
 * The float, its lever and the seat it works.
 *
 * @param ball diameter of the round float
 * @param weight of the whole float against fresh water; it must lie between oil and brine
 * @param lever pull at the seat over pull at the float
 * @param lost share of the pull that friction takes
 * @param port bore of the seat
 */
public record FloatSpec(Length ball, Gravity weight, Fraction lever, Fraction lost, Length port) {
  /** Thirty per cent; from memory. */
  public static final Fraction USUAL_FRICTION = Fraction.ofPercent(30);

  public FloatSpec {
    Objects.requireNonNull(weight, "weight");
    if (!(ball.metres() > 0 && port.metres() > 0 && lever.ratio() > 0)) {
      throw new IllegalArgumentException(
          "A float valve needs a ball, a lever and a port above zero");
    }
    if (!(lost.ratio() >= 0 && lost.ratio() < 1)) {
      throw new IllegalArgumentException(
          "Friction takes between none and all of the float's pull, not "
              + lost.toPercent()
              + " %");
    }
  }
}
