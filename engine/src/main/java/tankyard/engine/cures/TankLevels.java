package tankyard.engine.cures;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * What the gauge must read to fill the water tank from below, by how full it stands.
 *
 * @param drawnSo whether it is drawn filled from below; if not, this is what that would ask for
 * @param asDrawn the least as the tank is drawn: over its top at any level, or at its highest
 * @param levels the lowest first
 * @param onTheWay what on the way to the tank asks for most: a high point, or the start of the leg
 */
public record TankLevels(
    String tankId,
    String tankName,
    boolean drawnSo,
    Pressure asDrawn,
    List<AtLevel> levels,
    Optional<String> onTheWay) {
  public TankLevels {
    levels = List.copyOf(levels);
  }

  /** Whether something on the way asks for more than the tank at any level. */
  public boolean heldOnTheWay() {
    return levels.stream().allMatch(AtLevel::crest);
  }

  /**
   * The least at one level.
   *
   * @param words "at pump-off", "half full", "full"
   * @param level above the tank's bottom
   * @param crest whether {@link #onTheWay()} sets it, so that the level no longer counts
   */
  public record AtLevel(String words, Length level, Pressure gauge, boolean crest) {}
}
