package tankyard.engine.vessels;

import tankyard.engine.numeric.Roots;
import tankyard.engine.units.Length;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Computed;

/** A closed round vessel and what it holds up to a height above its lowest inside point. */
public sealed interface Vessel permits LyingVessel, StandingVessel {

  /** From the lowest to the highest inside point. */
  double heightM();

  /** Below a height above its lowest inside point; heights outside the vessel count as its ends. */
  double belowM3(double heightM);

  /** The same with its working. */
  Computed<Volume> below(Length height);

  default double fullM3() {
    return belowM3(heightM());
  }

  default double betweenM3(double lowM, double highM) {
    return belowM3(highM) - belowM3(lowM);
  }

  /** The height to which a volume fills it. */
  default double heightForM(double volumeM3) {
    if (!(volumeM3 >= 0 && volumeM3 <= fullM3() * (1 + 1e-12))) {
      throw new IllegalArgumentException(
          volumeM3 + " m3 do not go into a vessel that holds " + fullM3() + " m3");
    }
    if (volumeM3 == 0 || volumeM3 >= fullM3()) {
      return volumeM3 == 0 ? 0 : heightM();
    }
    return Roots.between("level", h -> belowM3(h) - volumeM3, 0, heightM());
  }
}
