package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.TankBuilder;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.LegRun;
import tankyard.engine.units.Length;
import tankyard.engine.window.PressureLimit;

/** The water tank filled from below, or moved to the battery with its pump. */
final class TankCures {
  static final Length LOW = Length.ofFeet(1);
  private static final double FAR_FT = 200;
  private static final double BESIDE_FT = 40;

  private TankCures() {}

  static List<Cure> of(CureSite site) {
    List<Cure> found = new ArrayList<>();
    site.leg()
        .ifPresent(
            leg -> {
              boolean over = leg.tank().entry() == Tank.Entry.TOP;
              boolean governs =
                  site.window().least().orElseThrow().kind() == PressureLimit.Kind.TANK_INLET;
              if (over && governs) {
                found.add(fromBelow(leg.tank()));
              }
              atTheBattery(site, leg).ifPresent(found::add);
            });
    return found;
  }

  private static Cure fromBelow(Tank tank) {
    return new Cure(
        "bottom-fill",
        tank.id(),
        tank.name() + " filled from below, with a check valve",
        "A half-empty tank gives back more. Without its check valve the tank runs back through the"
            + " leg.",
        CureResult.Billing.ALL,
        lease ->
            lease.with(
                TankBuilder.builder(tank).entry(Tank.Entry.BOTTOM).inletHeight(LOW).build()));
  }

  private static Optional<Cure> atTheBattery(CureSite site, LegRun leg) {
    Separator separator = site.separator();
    Tank tank = leg.tank();
    if (leg.runs().size() > 1
        || tank.at().metresTo(separator.at()) < Length.ofFeet(FAR_FT).metres()) {
      return Optional.empty();
    }
    Line water = leg.runs().get(0).laid().line();
    boolean pumped = pump(site.lease(), tank).isPresent();
    return Optional.of(
        new Cure(
            "tank-at-battery",
            tank.id(),
            tank.name()
                + (pumped ? " and its pump" : "")
                + " moved to "
                + separator.name()
                + (pumped ? ", the injection line longer by the leg" : ""),
            pumped
                ? "The injection line's loss does not touch the wells, but the pump's; look at its"
                    + " pressure and permit. Crane and haul of what stands already are not in the bill."
                : "No injection pump and line are drawn: what the longer injection line costs is not"
                    + " in the bill.",
            CureResult.Billing.PART,
            lease -> moved(lease, separator, tank, water)));
  }

  private static Optional<InjectionPump> pump(Lease lease, Tank tank) {
    return lease
        .linesOf(tank.id())
        .filter(l -> l.service() == Service.SUCTION && l.from().equals(tank.id()))
        .flatMap(l -> lease.thing(l.to()).stream())
        .filter(InjectionPump.class::isInstance)
        .map(InjectionPump.class::cast)
        .findFirst();
  }

  private static Lease moved(Lease lease, Separator separator, Tank tank, Line water) {
    Lease changed = lease.with(beside(separator, tank, 1)).with(shortened(water));
    Optional<InjectionPump> pump = pump(lease, tank);
    if (pump.isEmpty()) {
      return changed;
    }
    changed = changed.with(beside(separator, pump.get(), 2));
    for (Line line : lease.linesOf(pump.get().id()).toList()) {
      if (line.service() == Service.SUCTION) {
        changed = changed.with(shortened(line));
      } else if (line.service() == Service.INJECTION) {
        changed = changed.with(lengthened(line, pump.get(), water));
      }
    }
    return changed;
  }

  /** On the separator's own ground, to its east. */
  private static Thing beside(Separator separator, Thing thing, int place) {
    MapPoint at =
        new MapPoint(
            Length.ofFeet(separator.at().east().toFeet() + place * BESIDE_FT),
            separator.at().north());
    return thing.movedTo(at).withGround(separator.ground());
  }

  private static Line shortened(Line line) {
    return line.withRoute(List.of()).withLength(Optional.empty()).withStatus(Status.NEW);
  }

  /** Back along the old leg to where the pump stood, and on as before. */
  private static Line lengthened(Line injection, InjectionPump pump, Line water) {
    List<RoutePoint> route = new ArrayList<>(water.route());
    if (injection.to().equals(pump.id())) {
      Collections.reverse(route);
      List<RoutePoint> all = new ArrayList<>(injection.route());
      all.add(RoutePoint.at(pump.at()));
      all.addAll(route);
      return injection.withRoute(all).withLength(Optional.empty()).withStatus(Status.NEW);
    }
    route.add(RoutePoint.at(pump.at()));
    route.addAll(injection.route());
    return injection.withRoute(route).withLength(Optional.empty()).withStatus(Status.NEW);
  }
}
