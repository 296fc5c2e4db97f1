package tankyard.engine.leasefile;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.DumpValveBuilder;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Unknowns;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
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
        List.of(),
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
                Optional.of(Fraction.of(2, tankyard.engine.units.Unit.ONE)),
                Optional.empty())),
        Practice.usual(),
        new Prices(List.of(quote()), Optional.of(Fraction.ofPercent(15)), Optional.empty()),
        List.of(),
        Unknowns.none());
  }

  private static Well well() {
    return WellBuilder.builder()
        .id("W1")
        .name("Well 1")
        .at(MapPoint.ofFeet(300, 900))
        .ground(Optional.of(Elevation.ofFeet(842)))
        .status(Status.HAVE)
        .oil(LiquidRate.ofBarrelsPerDay(3))
        .water(LiquidRate.ofBarrelsPerDay(27))
        .build();
  }

  private static Separator separator() {
    return SeparatorBuilder.builder()
        .id("S")
        .name("Separator")
        .at(MapPoint.ofFeet(700, 650))
        .ground(Optional.of(Elevation.ofFeet(845)))
        .status(Status.NEW)
        .shape(Separator.Shape.HORIZONTAL)
        .diameter(Length.ofInches(24))
        .length(Length.ofFeet(6))
        .bottomHeight(Optional.of(Length.ofFeet(2)))
        .inletHeight(Length.ofFeet(3))
        .interfaceHeight(Length.ofFeet(3))
        .gaugeHeight(Length.ofFeet(4))
        .oilOutletHeight(Length.ofFeet(4))
        .waterOutletHeight(Length.ofFeet(2))
        .dumpValve(
            DumpValveBuilder.builder()
                .cv(Cv.ofGpmPerRootPsi(12))
                .workingTravel(Optional.of(Fraction.ofPercent(50)))
                .build())
        .regulator(Regulator.unset())
        .build();
  }

  private static Line flowLine() {
    return LineBuilder.builder()
        .id("L1")
        .name("W1 to separator")
        .service(Service.FLOW_LINE)
        .from("W1")
        .to("S")
        .route(List.of(RoutePoint.at(MapPoint.ofFeet(500, 800))))
        .pipe("poly-2")
        .slack(Optional.of(Fraction.ofPercent(5)))
        .fittings(List.of(new FittingCount("elbow-90", 2)))
        .status(Status.NEW)
        .build();
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
