package tankyard.engine.cures;

import java.util.List;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * What the gauge must read to fill the water tank from below, by how full it stands.
 *
 * @param drawnSo whether it is drawn filled from below; if not, this is what that would ask for
 * @param asDrawn the least as the tank is drawn: over its top at any level, or at its highest
 * @param levels the lowest first
 */
public record TankLevels(
    String tankId, String tankName, boolean drawnSo, Pressure asDrawn, List<AtLevel> levels) {
  public TankLevels {
    levels = List.copyOf(levels);
  }

  /**
   * The least at one level.
   *
   * @param words "empty", "half full", "full"
   * @param level above the tank's bottom
   * @param crest whether a high point on the way sets it, so that the level no longer counts
   */
  public record AtLevel(String words, Length level, Pressure gauge, boolean crest) {}
}
