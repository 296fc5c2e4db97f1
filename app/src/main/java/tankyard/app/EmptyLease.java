package tankyard.app;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.Unknowns;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Unit;

/**
 * A lease on which nothing stands yet. Its fluids are middling ones, to be typed over; its cases
 * are the two a battery always meets and the restart after a power cut.
 */
final class EmptyLease {
  private EmptyLease() {}

  static Lease lease() {
    return new Lease(
        "New lease",
        "",
        Site.unknown(),
        List.of(),
        Fluids.of(Gravity.of(35, Unit.DEGREE_API), Gravity.of(1.05, Unit.SPECIFIC_GRAVITY)),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            designCase(
                "summer", "Today, summer", DesignCase.Season.SUMMER, DesignCase.Running.AVERAGE),
            designCase(
                "winter", "Today, winter", DesignCase.Season.WINTER, DesignCase.Running.AVERAGE),
            designCase(
                "restart",
                "All on after a power cut",
                DesignCase.Season.WINTER,
                DesignCase.Running.ALL_ON)),
        Practice.usual(),
        Prices.none(),
        List.of(),
        Unknowns.none());
  }

  private static DesignCase designCase(
      String id, String name, DesignCase.Season season, DesignCase.Running running) {
    return new DesignCase(
        id, name, season, running, Optional.empty(), Optional.empty(), Optional.empty());
  }
}
