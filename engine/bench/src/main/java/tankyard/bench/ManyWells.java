package tankyard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseBuilder;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Time;

/**
 * An invented lease of as many wells as asked: battery, ground and cases of the demo lease, and in
 * the place of its wells four trunks of tees with wells drawn at random round each, half of their
 * lines with a corner. The rates are such that the demo's battery still fits.
 */
final class ManyWells {
  private static final int TRUNKS = 4;
  private static final int WELLS_A_TEE = 4;
  private static final double TEES_APART_FT = 480;

  private final Lease demo;
  private final Thing separator;
  private final int wellsWanted;
  private final Random random;
  private final List<Well> wells = new ArrayList<>();
  private final List<Tee> tees = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  private ManyWells(Lease demo, int wellsWanted, Random random) {
    this.demo = demo;
    this.separator = demo.separators().get(0);
    this.wellsWanted = wellsWanted;
    this.random = random;
  }

  /**
   * The lease.
   *
   * @param wells a multiple of sixteen
   */
  static Lease on(Lease demo, int wells, long seed) {
    return new ManyWells(demo, wells, new Random(seed)).lease();
  }

  private Lease lease() {
    int teesATrunk = wellsWanted / TRUNKS / WELLS_A_TEE;
    for (int trunk = 0; trunk < TRUNKS; trunk++) {
      double bearing = 2 * Math.PI * (trunk + 0.5 + 0.3 * random.nextDouble()) / TRUNKS;
      Thing inner = separator;
      for (int i = 0; i < teesATrunk; i++) {
        inner = tee(inner, bearing + 0.3 * random.nextGaussian());
      }
    }
    demo.lines().stream().filter(l -> l.service() != Service.FLOW_LINE).forEach(lines::add);
    return LeaseBuilder.builder(demo)
        .name(wellsWanted + " wells")
        .note("Invented.")
        .wells(wells)
        .tees(tees)
        .lines(lines)
        .build();
  }

  private Tee tee(Thing inner, double bearing) {
    String id = "T" + (tees.size() + 1);
    Tee tee =
        new Tee(id, id, away(inner.at(), bearing, TEES_APART_FT), Optional.empty(), Status.NEW);
    tees.add(tee);
    lines.add(flowLine("TR" + tees.size(), tee, inner, "pe4710-dr11-3"));
    for (int i = 0; i < WELLS_A_TEE; i++) {
      Well well = well(tee);
      wells.add(well);
      lines.add(flowLine("FL" + wells.size(), well, tee, "pe4710-dr11-2"));
    }
    return tee;
  }

  private Well well(Tee tee) {
    String id = "W" + (wells.size() + 1);
    double bearing = 2 * Math.PI * random.nextDouble();
    return WellBuilder.builder(demo.wells().get(0))
        .id(id)
        .name("Well " + (wells.size() + 1))
        .at(away(tee.at(), bearing, 150 + 250 * random.nextDouble()))
        .oil(LiquidRate.ofBarrelsPerDay(0.4 + 0.2 * random.nextInt(3)))
        .water(LiquidRate.ofBarrelsPerDay(4 + random.nextInt(5)))
        .runsPerDay(random.nextBoolean() ? Optional.of(Time.ofHours(12)) : Optional.empty())
        .build();
  }

  private Line flowLine(String id, Thing from, Thing to, String pipe) {
    return LineBuilder.builder(demo.lines().get(0))
        .id(id)
        .name(from.name() + " to " + to.name())
        .service(Service.FLOW_LINE)
        .from(from.id())
        .to(to.id())
        .route(random.nextBoolean() ? List.of(corner(from.at(), to.at())) : List.of())
        .pipe(pipe)
        .build();
  }

  private RoutePoint corner(MapPoint a, MapPoint b) {
    return RoutePoint.at(
        MapPoint.ofFeet(
            (a.east().toFeet() + b.east().toFeet()) / 2 + 60 * random.nextDouble(),
            (a.north().toFeet() + b.north().toFeet()) / 2 + 60 * random.nextDouble()));
  }

  private static MapPoint away(MapPoint from, double bearing, double feet) {
    return MapPoint.ofFeet(
        Math.rint(from.east().toFeet() + feet * Math.sin(bearing)),
        Math.rint(from.north().toFeet() + feet * Math.cos(bearing)));
  }
}
