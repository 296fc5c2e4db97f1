package tankyard.engine.pipes.gasliquid;

import java.util.List;
import java.util.Objects;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.fluids.HeldGas;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Gas in the oil of a line.
 *
 * @param oilM3PerS the oil's rate
 */
public record Solution(double oilM3PerS, HeldGas held) {
  private static final double SCF_PER_BBL =
      Unit.CUBIC_FOOT_PER_DAY.toSi(1) / Unit.BARREL_PER_DAY.toSi(1);

  public Solution {
    Objects.requireNonNull(held, "held");
    if (!(oilM3PerS >= 0)) {
      throw new IllegalArgumentException("Oil can't flow backwards: " + oilM3PerS + " m3/s");
    }
  }

  double standardM3PerS(AbsolutePressure pressure) {
    return oilM3PerS * SCF_PER_BBL * held.scfPerBbl(pressure);
  }

  /** The gas beside the liquid at a pressure, out of all that comes. */
  public Working freeWorking(double allStandardM3PerS, AbsolutePressure pressure) {
    return Working.of(
            "Free gas",
            "G",
            "max(0,Ga-Q*Rs/1000)",
            Unit.MCF_PER_DAY,
            Source.definition("all the gas less what the oil holds; water holds none"),
            Term.of(
                "Ga", "all the gas", Unit.MCF_PER_DAY.fromSi(allStandardM3PerS), Unit.MCF_PER_DAY),
            Term.of("Q", "oil", Unit.BARREL_PER_DAY.fromSi(oilM3PerS), Unit.BARREL_PER_DAY),
            Term.number("Rs", "scf/bbl the oil holds", held.scfPerBbl(pressure)))
        .from(List.of(held.working(pressure)));
  }
}
