package tankyard.app.edit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.BermBuilder;
import tankyard.engine.lease.DumpValveBuilder;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.GunBarrelBuilder;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionPumpBuilder;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.InjectionWellBuilder;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.LandmarkBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.PowerPole;
import tankyard.engine.lease.PowerPoleBuilder;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.SeparatorBuilder;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.TankBuilder;
import tankyard.engine.lease.TeeBuilder;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Voltage;
import tankyard.engine.units.WellResistance;

/**
 * What a thing is when it has just been set on the map and nobody has filled in its sheet.
 *
 * <p>Rates start at zero: what a well makes is for its owner to say. Sizes start at a common one,
 * so that there is something to draw to scale: a 210 bbl tank of API 12F (10 ft by 15 ft, overflow
 * at 14.5 ft; from memory), a separator of 30 in by 10 ft, a gun barrel of 10 ft by 20 ft, a dump
 * valve of Cv 12 (common practice, no source). They are no recommendation.
 */
public final class Blanks {
  private static final Length PIPE_CENTRE = Length.ofFeet(1);
  private final String usualPipe;

  /**
   * Blanks for one catalogue.
   *
   * @param usualPipe catalogue id a line gets on a lease that has no line yet; empty for none
   */
  public Blanks(String usualPipe) {
    this.usualPipe = usualPipe;
  }

  public Thing thing(Lease lease, ThingKind kind, MapPoint at) {
    String id = Naming.nextId(lease, kind.letters());
    String name = Naming.nextName(lease, kind.words());
    return switch (kind) {
      case WELL -> well(id, name, at);
      case TEE -> TeeBuilder.builder().id(id).name(name).at(at).status(Status.NEW).build();
      case SEPARATOR -> separator(id, name, at);
      case GUN_BARREL -> gunBarrel(id, name, at, pipe(lease, Service.WATER_LEG));
      case OIL_TANK -> tank(id, name, at, Tank.Duty.OIL);
      case WATER_TANK -> tank(id, name, at, Tank.Duty.WATER);
      case INJECTION_PUMP -> pump(id, name, at);
      case INJECTION_WELL -> injectionWell(id, name, at);
      case POWER_POLE -> powerPole(id, name, at);
      case BERM -> berm(id, name, at);
      case LANDMARK -> landmark(id, name, at);
    };
  }

  /** A line of the service its ends suggest, of the pipe most used for that. */
  public Line line(Lease lease, String from, String to, List<RoutePoint> route) {
    Service service = LineService.between(Places.thing(lease, from), Places.thing(lease, to));
    return LineBuilder.builder()
        .id(Naming.nextId(lease, "L"))
        .name(Naming.nextName(lease, service))
        .service(service)
        .from(from)
        .to(to)
        .route(route)
        .pipe(pipe(lease, service))
        .fittings(List.of())
        .status(Status.NEW)
        .build();
  }

  private String pipe(Lease lease, Service service) {
    return mostUsed(lease.lines().stream().filter(l -> l.service() == service))
        .or(() -> mostUsed(lease.lines().stream()))
        .orElse(usualPipe);
  }

  private static Optional<String> mostUsed(Stream<Line> lines) {
    Map<String, Integer> counts = new HashMap<>();
    lines.forEach(l -> counts.merge(l.pipe(), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(
            Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Map.Entry.<String, Integer>comparingByKey()))
        .map(Map.Entry::getKey);
  }

  private static Well well(String id, String name, MapPoint at) {
    return WellBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .oil(LiquidRate.ofBarrelsPerDay(0))
        .water(LiquidRate.ofBarrelsPerDay(0))
        .build();
  }

  private static Separator separator(String id, String name, MapPoint at) {
    return SeparatorBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .shape(Separator.Shape.HORIZONTAL)
        .diameter(Length.ofInches(30))
        .length(Length.ofFeet(10))
        .inletHeight(Length.ofFeet(4))
        .interfaceHeight(Length.ofFeet(2.5))
        .gaugeHeight(Length.ofFeet(4))
        .oilOutletHeight(Length.ofFeet(4))
        .waterOutletHeight(PIPE_CENTRE)
        .dumpValve(DumpValveBuilder.builder().cv(Cv.of(12, Unit.CV)).build())
        .regulator(Regulator.unset())
        .build();
  }

  private static GunBarrel gunBarrel(String id, String name, MapPoint at, String pipe) {
    return GunBarrelBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .diameter(Length.ofFeet(10))
        .shellHeight(Length.ofFeet(20))
        .inletHeight(Length.ofFeet(20))
        .oilOutletHeight(Length.ofFeet(18))
        .interfaceHeight(Length.ofFeet(10))
        .legPipe(pipe)
        .build();
  }

  private static Tank tank(String id, String name, MapPoint at, Tank.Duty duty) {
    return TankBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .duty(duty)
        .diameter(Length.ofFeet(10))
        .shellHeight(Length.ofFeet(15))
        .overflowHeight(Length.ofFeet(14.5))
        .inletHeight(Length.ofFeet(14.5))
        .entry(Tank.Entry.TOP)
        .outletHeight(duty == Tank.Duty.OIL ? Optional.of(Length.ofFeet(1)) : Optional.empty())
        .build();
  }

  private static InjectionPump pump(String id, String name, MapPoint at) {
    return InjectionPumpBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .rate(LiquidRate.ofBarrelsPerDay(200))
        .suctionHeight(PIPE_CENTRE)
        .dischargeHeight(PIPE_CENTRE)
        .build();
  }

  private static InjectionWell injectionWell(String id, String name, MapPoint at) {
    return InjectionWellBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .wellheadHeight(Length.ofFeet(3))
        .pressureAtNoFlow(Pressure.ofPsi(0))
        .resistance(WellResistance.of(0, Unit.PSI_PER_BARREL_PER_DAY))
        .build();
  }

  /** What is commonest on a lease of a few wells; common practice, no source. */
  private static PowerPole powerPole(String id, String name, MapPoint at) {
    return PowerPoleBuilder.builder()
        .id(id)
        .name(name)
        .at(at)
        .status(Status.NEW)
        .volts(Voltage.ofVolts(240))
        .phases(PowerPole.Phases.ONE)
        .build();
  }

  /** Room for two tanks in a row; to be dragged round what it must hold. */
  private static Berm berm(String id, String name, MapPoint at) {
    double halfLengthM = Length.ofFeet(30).metres();
    double halfWidthM = Length.ofFeet(20).metres();
    return BermBuilder.builder()
        .id(id)
        .name(name)
        .corners(
            List.of(
                at.shifted(-halfLengthM, -halfWidthM),
                at.shifted(halfLengthM, -halfWidthM),
                at.shifted(halfLengthM, halfWidthM),
                at.shifted(-halfLengthM, halfWidthM)))
        .status(Status.NEW)
        .build();
  }

  private static Landmark landmark(String id, String name, MapPoint at) {
    return LandmarkBuilder.builder()
        .id(id)
        .name(name)
        .corners(List.of(at))
        .status(Status.HAVE)
        .what(Landmark.What.HOUSE)
        .build();
  }
}
