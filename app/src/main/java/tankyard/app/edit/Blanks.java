package tankyard.app.edit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.WellResistance;

/**
 * What a thing is when it has just been set on the map and nobody has filled in its sheet.
 *
 * <p>Rates start at zero: what a well makes is for its owner to say. Sizes start at a common one,
 * so that there is something to draw to scale: a 210 bbl tank of API 12F (10 ft by 15 ft, overflow
 * at 14.5 ft; from memory), a separator of 30 in by 10 ft, a dump valve of Cv 12 (common practice,
 * no source). They are no recommendation.
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
      case TEE -> new Tee(id, name, at, Optional.empty(), Status.NEW);
      case SEPARATOR -> separator(id, name, at);
      case OIL_TANK -> tank(id, name, at, Tank.Duty.OIL);
      case WATER_TANK -> tank(id, name, at, Tank.Duty.WATER);
      case INJECTION_PUMP -> pump(id, name, at);
      case INJECTION_WELL -> injectionWell(id, name, at);
    };
  }

  /** A line of the service its ends suggest, of the pipe most used for that. */
  public Line line(Lease lease, String from, String to, List<RoutePoint> route) {
    Service service = LineService.between(Places.thing(lease, from), Places.thing(lease, to));
    return new Line(
        Naming.nextId(lease, "L"),
        Naming.nextName(lease, service),
        service,
        from,
        to,
        route,
        pipe(lease, service),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Status.NEW);
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
    return new Well(
        id,
        name,
        at,
        Optional.empty(),
        Status.NEW,
        LiquidRate.ofBarrelsPerDay(0),
        LiquidRate.ofBarrelsPerDay(0),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Separator separator(String id, String name, MapPoint at) {
    return new Separator(
        id,
        name,
        at,
        Optional.empty(),
        Status.NEW,
        Optional.empty(),
        Separator.Shape.HORIZONTAL,
        Length.ofInches(30),
        Length.ofFeet(10),
        Optional.empty(),
        Length.ofFeet(4),
        Length.ofFeet(2.5),
        Length.ofFeet(4),
        Length.ofFeet(4),
        PIPE_CENTRE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new DumpValve(
            Optional.empty(),
            Cv.of(12, Unit.CV),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        Regulator.unset());
  }

  private static Tank tank(String id, String name, MapPoint at, Tank.Duty duty) {
    return new Tank(
        id,
        name,
        at,
        Optional.empty(),
        Status.NEW,
        duty,
        Optional.empty(),
        Length.ofFeet(10),
        Length.ofFeet(15),
        Length.ofFeet(14.5),
        Length.ofFeet(14.5),
        Tank.Entry.TOP,
        duty == Tank.Duty.OIL ? Optional.of(Length.ofFeet(1)) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static InjectionPump pump(String id, String name, MapPoint at) {
    return new InjectionPump(
        id,
        name,
        at,
        Optional.empty(),
        Status.NEW,
        Optional.empty(),
        LiquidRate.ofBarrelsPerDay(200),
        PIPE_CENTRE,
        PIPE_CENTRE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static InjectionWell injectionWell(String id, String name, MapPoint at) {
    return new InjectionWell(
        id,
        name,
        at,
        Optional.empty(),
        Status.NEW,
        Length.ofFeet(3),
        Pressure.ofPsi(0),
        WellResistance.of(0, Unit.PSI_PER_BARREL_PER_DAY),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
