package tankyard.engine.fluids;

import java.util.Objects;

/**
 * Sweet gas known by its weight.
 *
 * @param gravityToAir its density over that of air at the same conditions, 0.55 (methane) upwards
 * @param zLaw how its compressibility is found
 */
public record GasSpec(double gravityToAir, ZLaw zLaw) {
  public GasSpec {
    Objects.requireNonNull(zLaw, "zLaw");
    if (!(gravityToAir > 0.06 && gravityToAir <= 3)) {
      throw new IllegalArgumentException(
          "A gas gravity is counted against air (methane 0.55, air 1) and was typed as "
              + gravityToAir);
    }
  }

  public static GasSpec ofGravity(double gravityToAir) {
    return new GasSpec(gravityToAir, ZLaw.DRANCHUK_ABOU_KASSEM);
  }
}
