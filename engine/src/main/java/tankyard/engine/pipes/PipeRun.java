package tankyard.engine.pipes;

import java.util.Objects;

/**
 * One size of pipe along its path, with the fittings on it.
 *
 * @param boreM inside diameter
 * @param roughnessM of the wall
 */
public record PipeRun(double boreM, double roughnessM, PipePath path, MinorLosses minor) {
  /** Colebrook's equation was drawn up to this roughness over bore (Moody's chart ends there). */
  public static final double ROUGHEST = 0.05;

  public PipeRun {
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(minor, "minor");
    if (!(boreM > 0 && Double.isFinite(boreM))) {
      throw new IllegalArgumentException("A bore must be above zero: " + boreM + " m");
    }
    if (!(roughnessM >= 0 && roughnessM < boreM / 2)) {
      throw new IllegalArgumentException(
          "A wall of roughness " + roughnessM + " m does not leave a bore of " + boreM + " m");
    }
  }

  /** The part between two distances from its start, with its share of the fittings. */
  PipeRun between(double fromM, double toM) {
    return new PipeRun(
        boreM, roughnessM, path.between(fromM, toM), minor.share((toM - fromM) / path.lengthM()));
  }

  public double areaM2() {
    return Math.PI / 4 * boreM * boreM;
  }

  public double volumeM3() {
    return areaM2() * path.lengthM();
  }

  public double relativeRoughness() {
    return roughnessM / boreM;
  }
}
