package tankyard.app.example;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.DumpValveBuilder;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionPumpBuilder;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.InjectionWellBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Site;
import tankyard.engine.lease.SpotHeight;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.TankBuilder;
import tankyard.engine.lease.TeeBuilder;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Unknowns;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.WellResistance;

/** A small invented lease for tests: three wells, a tee, a separator, two tanks, pump and well. */
public final class SmallLease {
  private SmallLease() {}

  public static Lease lease() {
    Lease lease = bare();
    for (Thing thing : things()) {
      lease = lease.with(thing);
    }
    for (Line line : lines()) {
      lease = lease.with(line);
    }
    return lease;
  }

  public static Lease bare() {
    return new Lease(
        "Small lease",
        "Invented for tests",
        Site.unknown(),
        List.of(
            spot(0, 0, 1000),
            spot(1000, 0, 1020),
            spot(0, 1000, 990),
            spot(1000, 1000, 1005),
            spot(500, 420, 1030)),
        Fluids.of(Gravity.of(36, Unit.DEGREE_API), Gravity.of(1.08, Unit.SPECIFIC_GRAVITY)),
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
            designCase("summer", DesignCase.Season.SUMMER),
            designCase("winter", DesignCase.Season.WINTER)),
        Practice.usual(),
        Prices.none(),
        List.of(),
        Unknowns.none());
  }

  private static DesignCase designCase(String id, DesignCase.Season season) {
    return new DesignCase(
        id,
        "Today, " + season.words(),
        season,
        DesignCase.Running.AVERAGE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static List<Thing> things() {
    return List.of(
        well(1, 100, 100),
        well(2, 300, 80),
        well(3, 120, 320),
        TeeBuilder.builder().id("T1").name("Tee 1").at(at(240, 220)).status(Status.NEW).build(),
        separator("S1", 460, 300),
        tank("OT1", "Oil tank 1", Tank.Duty.OIL, 540, 300),
        tank("WT1", "Water tank 1", Tank.Duty.WATER, 700, 420),
        pump(740, 420),
        injectionWell(920, 640));
  }

  private static List<Line> lines() {
    return List.of(
        line("L1", Service.FLOW_LINE, "W1", "T1"),
        line("L2", Service.FLOW_LINE, "W2", "T1"),
        line("L3", Service.FLOW_LINE, "W3", "T1"),
        line("L4", Service.FLOW_LINE, "T1", "S1"),
        line("L5", Service.OIL_LEG, "S1", "OT1"),
        line("L6", Service.WATER_LEG, "S1", "WT1", RoutePoint.at(at(500, 420))),
        line("L7", Service.OVERFLOW, "OT1", "WT1"),
        line("L8", Service.SUCTION, "WT1", "P1"),
        line("L9", Service.INJECTION, "P1", "IW1", RoutePoint.at(at(900, 440))));
  }

  public static MapPoint at(double eastFt, double northFt) {
    return MapPoint.ofFeet(eastFt, northFt);
  }

  private static SpotHeight spot(double eastFt, double northFt, double groundFt) {
    return new SpotHeight(at(eastFt, northFt), Elevation.ofFeet(groundFt));
  }

  public static Well well(int number, double eastFt, double northFt) {
    return WellBuilder.builder()
        .id("W" + number)
        .name("Well " + number)
        .at(at(eastFt, northFt))
        .ground(Optional.of(Elevation.ofFeet(1000 + number)))
        .status(Status.HAVE)
        .oil(LiquidRate.ofBarrelsPerDay(2))
        .water(LiquidRate.ofBarrelsPerDay(25))
        .boxHeight(Optional.of(Length.ofFeet(4)))
        .boxLimit(Optional.of(Pressure.ofPsi(60)))
        .build();
  }

  public static Separator separator(String id, double eastFt, double northFt) {
    return SeparatorBuilder.builder()
        .id(id)
        .name("Separator 1")
        .at(at(eastFt, northFt))
        .ground(Optional.of(Elevation.ofFeet(1010)))
        .status(Status.HAVE)
        .shape(Separator.Shape.HORIZONTAL)
        .diameter(Length.ofInches(30))
        .length(Length.ofFeet(10))
        .inletHeight(Length.ofFeet(4))
        .interfaceHeight(Length.ofFeet(2.5))
        .gaugeHeight(Length.ofFeet(4))
        .oilOutletHeight(Length.ofFeet(4))
        .waterOutletHeight(Length.ofFeet(1))
        .nameplate(Optional.of(Pressure.ofPsi(125)))
        .relief(Optional.of(Pressure.ofPsi(75)))
        .dumpValve(DumpValveBuilder.builder().cv(Cv.of(12, Unit.CV)).build())
        .regulator(Regulator.unset())
        .build();
  }

  public static Tank tank(String id, String name, Tank.Duty duty, double eastFt, double northFt) {
    return TankBuilder.builder()
        .id(id)
        .name(name)
        .at(at(eastFt, northFt))
        .status(Status.NEW)
        .duty(duty)
        .diameter(Length.ofFeet(10))
        .shellHeight(Length.ofFeet(15))
        .overflowHeight(Length.ofFeet(14))
        .inletHeight(Length.ofFeet(14.5))
        .entry(Tank.Entry.TOP)
        .outletHeight(Optional.of(Length.ofFeet(1)))
        .build();
  }

  private static InjectionPump pump(double eastFt, double northFt) {
    return InjectionPumpBuilder.builder()
        .id("P1")
        .name("Injection pump 1")
        .at(at(eastFt, northFt))
        .status(Status.NEW)
        .rate(LiquidRate.ofBarrelsPerDay(200))
        .suctionHeight(Length.ofFeet(1))
        .dischargeHeight(Length.ofFeet(1))
        .build();
  }

  private static InjectionWell injectionWell(double eastFt, double northFt) {
    return InjectionWellBuilder.builder()
        .id("IW1")
        .name("Injection well 1")
        .at(at(eastFt, northFt))
        .status(Status.HAVE)
        .wellheadHeight(Length.ofFeet(3))
        .pressureAtNoFlow(Pressure.ofPsi(100))
        .resistance(WellResistance.of(0.5, Unit.PSI_PER_BARREL_PER_DAY))
        .build();
  }

  public static Line line(
      String id, Service service, String from, String to, RoutePoint... corners) {
    return LineBuilder.builder()
        .id(id)
        .name("Line " + id.substring(1))
        .service(service)
        .from(from)
        .to(to)
        .route(List.of(corners))
        .pipe("any-pipe")
        .fittings(List.of())
        .status(Status.NEW)
        .build();
  }
}
