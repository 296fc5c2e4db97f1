package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LegRun;
import tankyard.engine.units.Length;
import tankyard.engine.window.PressureLimit;

/** A deeper trench at the crest that sets the least, where a corner of the route stands on it. */
final class TrenchCures {
  private static final double[] DEEPER_FT = {3, 6};
  private static final double ON_IT_FT = 30;

  private TrenchCures() {}

  static List<Cure> of(CureSite site) {
    List<Cure> found = new ArrayList<>();
    site.window()
        .least()
        .filter(least -> least.kind() == PressureLimit.Kind.CREST)
        .flatMap(least -> crest(site, least))
        .ifPresent(
            crest -> {
              for (double feet : DEEPER_FT) {
                found.add(cure(site, crest, feet));
              }
            });
    return found;
  }

  /** A line and which corner of its route, from zero. */
  private record Crest(Line line, int corner) {}

  private static Optional<Crest> crest(CureSite site, PressureLimit least) {
    return site.leg(least).stream()
        .flatMap(leg -> leg.highPoints().stream())
        .filter(high -> high.line().id().equals(least.thingId()))
        .filter(high -> least.crest().filter(c -> c.along().equals(high.along())).isPresent())
        .findFirst()
        .flatMap(high -> corner(site.lease(), high));
  }

  private static Optional<Crest> corner(Lease lease, LegRun.HighPoint high) {
    Line line = high.line().line();
    MapPoint before = lease.thing(line.from()).orElseThrow().at();
    double walked = 0;
    for (int i = 0; i < line.route().size(); i++) {
      walked += before.metresTo(line.route().get(i).at());
      before = line.route().get(i).at();
      if (Math.abs(walked - high.along().metres()) <= Length.ofFeet(ON_IT_FT).metres()) {
        return Optional.of(new Crest(line, i));
      }
    }
    return Optional.empty();
  }

  private static Cure cure(CureSite site, Crest crest, double feet) {
    Line line = crest.line();
    RoutePoint corner = line.route().get(crest.corner());
    double now =
        corner
            .depth()
            .or(line::depth)
            .or(() -> site.lease().practice().depth())
            .orElse(Defaults.DEPTH)
            .toFeet();
    List<RoutePoint> route = new ArrayList<>(line.route());
    route.set(
        crest.corner(),
        new RoutePoint(corner.at(), corner.ground(), Optional.of(Length.ofFeet(now + feet))));
    return new Cure(
        "deeper-trench",
        line.id(),
        "the trench of " + line.name() + " " + print(feet) + " ft deeper at the crest",
        "The bill takes every trench by its length: the deeper digging and its shoring come on top.",
        CureResult.Billing.PART,
        lease -> lease.with(line.withRoute(route)));
  }

  private static String print(double feet) {
    return tankyard.engine.units.Figures.significant(feet, 2);
  }
}
