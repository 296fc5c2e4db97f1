package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Fraction;

/**
 * One set of circumstances the battery must work in.
 *
 * @param season which ground temperature holds
 * @param running which wells run at once
 * @param oil the wells' oil against today's; 1 if not said
 * @param water the wells' water against today's; 1 if not said
 * @param sharedSurge what lines that several wells share carry over the sum of their wells, where
 *     their strokes are taken to meet; 1 if not said
 */
public record DesignCase(
    String id,
    String name,
    Season season,
    Running running,
    Optional<Fraction> oil,
    Optional<Fraction> water,
    Optional<Fraction> sharedSurge) {

  /** Which ground temperature holds. */
  public enum Season {
    SUMMER("summer"),
    WINTER("winter");

    private final String words;

    Season(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Which wells run at once. */
  public enum Running {
    /** Every well at its day's average. */
    AVERAGE("day's average"),
    /** Every well at the rate it makes while it runs, all together. */
    ALL_ON("all wells on");

    private final String words;

    Running(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The same with other water. */
  public DesignCase withWater(Fraction times) {
    return new DesignCase(id, name, season, running, oil, Optional.of(times), sharedSurge);
  }

  public double oilFactor() {
    return oil.map(Fraction::ratio).orElse(1.0);
  }

  public double waterFactor() {
    return water.map(Fraction::ratio).orElse(1.0);
  }

  public double sharedSurgeFactor() {
    return sharedSurge.map(Fraction::ratio).orElse(1.0);
  }
}
