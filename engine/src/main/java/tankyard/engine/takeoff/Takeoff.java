package tankyard.engine.takeoff;

import java.util.Comparator;
import java.util.List;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;

/** The way to a takeoff. */
public final class Takeoff {
  private Takeoff() {}

  /**
   * Counts a lease.
   *
   * @param catalog what can be bought; the lease's own pipes are put with it
   * @param lengths how much pipe each line takes
   */
  public static List<TakeoffLine> of(Lease lease, Catalog catalog, GroundLengths lengths) {
    Catalog withOwn = catalog.withOwnPipes(lease.ownPipes());
    Drawing drawing = new Drawing(lease, withOwn, lengths);
    Tally tally = new Tally();
    for (TakeoffRule rule : TakeoffRules.all()) {
      tally.runningRule(rule);
      rule.count(drawing, tally);
    }
    return Purchase.inWholePieces(tally.lines(), withOwn).stream()
        .sorted(
            Comparator.comparing(TakeoffLine::kind)
                .thenComparing(TakeoffLine::status)
                .thenComparing(TakeoffLine::comesWith))
        .toList();
  }
}
