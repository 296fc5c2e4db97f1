package tankyard.engine.leasefile;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Unknowns;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;

/** A lease with one well and one separator, for tests of the file alone. */
final class SampleLease {
  private SampleLease() {}

  static Lease small() {
    return new Lease(
        "Sample",
        "",
        Site.unknown(),
        List.of(),
        Fluids.of(Gravity.ofApi(36), Gravity.of(1.06, tankyard.engine.units.Unit.SPECIFIC_GRAVITY)),
        List.of(well()),
        List.of(),
        List.of(separator()),
        List.of(),
        List.of(),
        List.of(),
        List.of(flowLine()),
        List.of(
            new DesignCase(
                "today",
                "Today",
                DesignCase.Season.SUMMER,
                DesignCase.Running.ALL_ON,
                Optional.empty(),
                Optional.of(Fraction.of(2, tankyard.engine.units.Unit.ONE)))),
        Practice.usual(),
        new Prices(List.of(quote()), Optional.of(Fraction.ofPercent(15)), Optional.empty()),
        List.of(),
        Unknowns.none());
  }

  private static Well well() {
    return new Well(
        "W1",
        "Well 1",
        MapPoint.ofFeet(300, 900),
        Optional.of(Elevation.ofFeet(842)),
        Status.HAVE,
        LiquidRate.ofBarrelsPerDay(3),
        LiquidRate.ofBarrelsPerDay(27),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Separator separator() {
    return new Separator(
        "S",
        "Separator",
        MapPoint.ofFeet(700, 650),
        Optional.of(Elevation.ofFeet(845)),
        Status.NEW,
        Optional.empty(),
        Separator.Shape.HORIZONTAL,
        Length.ofInches(24),
        Length.ofFeet(6),
        Optional.of(Length.ofFeet(2)),
        Length.ofFeet(3),
        Length.ofFeet(3),
        Length.ofFeet(4),
        Length.ofFeet(4),
        Length.ofFeet(2),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new DumpValve(
            Optional.empty(),
            Cv.ofGpmPerRootPsi(12),
            Optional.of(Fraction.ofPercent(50)),
            Optional.empty(),
            Optional.empty()),
        Regulator.unset());
  }

  private static Line flowLine() {
    return new Line(
        "L1",
        "W1 to separator",
        Service.FLOW_LINE,
        "W1",
        "S",
        List.of(RoutePoint.at(MapPoint.ofFeet(500, 800))),
        "poly-2",
        Optional.empty(),
        Optional.of(Fraction.ofPercent(5)),
        Optional.empty(),
        List.of(new FittingCount("elbow-90", 2)),
        Optional.empty(),
        Status.NEW);
  }

  private static Quote quote() {
    return new Quote(
        "Q1",
        "2-in poly",
        List.of("flow-line-pipe", "leg-pipe"),
        Quote.Basis.FOOT,
        new BigDecimal("1.10"),
        "USD",
        Optional.of(12.5),
        Optional.of(Fraction.ofPercent(5)),
        "invented",
        Optional.of(LocalDate.of(2026, 7, 1)));
  }
}
