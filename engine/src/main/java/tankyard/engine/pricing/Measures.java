package tankyard.engine.pricing;

import java.util.OptionalDouble;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.lease.Quote;
import tankyard.engine.takeoff.TakeoffLine;
import tankyard.engine.units.Length;

/** How much of what a price is for there is in a takeoff line. */
final class Measures {
  private static final double METRES_PER_FOOT = Length.ofFeet(1).metres();

  private Measures() {}

  /** The factor from the line's measure to the price's; empty where they don't go together. */
  static OptionalDouble factor(TakeoffLine line, Quote.Basis price, Catalog catalog) {
    if (line.measure() == price) {
      return OptionalDouble.of(1);
    }
    return switch (price) {
      case METRE -> from(line, Quote.Basis.FOOT, METRES_PER_FOOT);
      case FOOT -> from(line, Quote.Basis.METRE, 1 / METRES_PER_FOOT);
      case BARREL -> barrels(line, catalog);
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble from(TakeoffLine line, Quote.Basis measure, double factor) {
    return line.measure() == measure ? OptionalDouble.of(factor) : OptionalDouble.empty();
  }

  /** A tank by the barrel is by its nominal barrels. */
  private static OptionalDouble barrels(TakeoffLine line, Catalog catalog) {
    return line.item()
        .flatMap(id -> catalog.item(id, TankSize.class))
        .map(tank -> OptionalDouble.of(tank.nominal().toBarrels()))
        .orElse(OptionalDouble.empty());
  }
}
