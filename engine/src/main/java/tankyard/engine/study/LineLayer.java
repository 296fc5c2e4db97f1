package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Loss;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;
import tankyard.engine.pipes.FittingLoss;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.terrain.RouteSpot;
import tankyard.engine.terrain.Station;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;

/**
 * Lays the drawn lines into the ground: from the nozzle down into the trench, along under the
 * ground with every bend it has, and up to the other nozzle.
 */
final class LineLayer {
  private static final double SHORTEST_M = 0.003;

  private final Practice practice;
  private final Map<String, Thing> things;
  private final Catalog catalog;
  private final LeaseGround ground;
  private final Nozzles nozzles;

  /**
   * For the lines of a lease.
   *
   * @param things by id, with every end of a line that is to be laid
   */
  LineLayer(Practice practice, Map<String, Thing> things, Catalog catalog, LeaseGround ground) {
    this.practice = practice;
    this.things = things;
    this.catalog = catalog;
    this.ground = ground;
    this.nozzles = new Nozzles(ground);
  }

  /** Empty where the catalogue has no such pipe. */
  Optional<LaidLine> lay(Line line) {
    return catalog.pipe(line.pipe()).map(pipe -> lay(line, pipe));
  }

  private LaidLine lay(Line line, Pipe pipe) {
    Thing from = things.get(line.from());
    Thing to = things.get(line.to());
    Trench trench = trench(line, from, to);
    List<LaidLine.Peg> pegs = new ArrayList<>();
    double first = nozzles.metres(from, line.service(), true, trench.depthM(0));
    double last = nozzles.metres(to, line.service(), false, trench.depthM(trench.mapM()));
    pegs.add(new LaidLine.Peg(0, 0, trench.stations().get(0).groundM(), first));
    double pipeM = 0;
    for (int i = 0; i < trench.stations().size(); i++) {
      Station station = trench.stations().get(i);
      double elevation = station.groundM() - trench.depthM(station.distanceM());
      pipeM += i == 0 ? Math.abs(first - elevation) : trench.pieceM(i);
      add(pegs, pipeM, station, elevation);
    }
    Station end = trench.stations().get(trench.stations().size() - 1);
    pipeM += Math.abs(last - pegs.get(pegs.size() - 1).elevationM());
    add(pegs, pipeM, end, last);
    if (pegs.size() == 1) {
      add(pegs, SHORTEST_M, end, last);
    }
    PipeRun run =
        new PipeRun(
            pipe.bore().metres(),
            pipe.roughness().metres(),
            path(pegs),
            minor(line, pipe).plus(atDumpValve(line, from, pipe)));
    return new LaidLine(line, pipe, LineLaw.of(run), trench.lengthM(), pegs);
  }

  /** Two stations at one place are one: a path must go on. */
  private static void add(
      List<LaidLine.Peg> pegs, double pipeM, Station station, double elevation) {
    LaidLine.Peg before = pegs.get(pegs.size() - 1);
    if (pipeM - before.pipeM() > 1e-6) {
      pegs.add(new LaidLine.Peg(pipeM, station.distanceM(), station.groundM(), elevation));
    }
  }

  private static PipePath path(List<LaidLine.Peg> pegs) {
    return PipePath.of(
        pegs.stream().mapToDouble(LaidLine.Peg::pipeM).toArray(),
        pegs.stream().mapToDouble(LaidLine.Peg::elevationM).toArray());
  }

  private Trench trench(Line line, Thing from, Thing to) {
    List<MapPoint> corners = new ArrayList<>();
    corners.add(from.at());
    line.route().stream().map(RoutePoint::at).forEach(corners::add);
    corners.add(to.at());
    List<RouteSpot> route =
        corners.stream().map(c -> new RouteSpot(c.east().metres(), c.north().metres())).toList();
    List<Station> stations = ground.surface().along(route);
    if (stations.isEmpty()) {
      stations = level(route);
    }
    double depth = Defaults.metresDeep(line.depth(), practice);
    return new Trench(
        stations,
        depths(line, corners, depth),
        1 + line.slack().map(Fraction::ratio).orElse(0.0),
        line.length().map(Length::metres));
  }

  /** No height is known anywhere: the ground is taken to lie at the datum. */
  private static List<Station> level(List<RouteSpot> route) {
    List<Station> stations = new ArrayList<>();
    double walked = 0;
    for (int i = 0; i < route.size(); i++) {
      RouteSpot at = route.get(i);
      if (i > 0) {
        RouteSpot before = route.get(i - 1);
        walked += Math.hypot(at.eastM() - before.eastM(), at.northM() - before.northM());
      }
      stations.add(new Station(walked, at.eastM(), at.northM(), 0));
    }
    return stations;
  }

  private static List<Trench.Depth> depths(Line line, List<MapPoint> corners, double usual) {
    List<Trench.Depth> depths = new ArrayList<>();
    double walked = 0;
    for (int i = 0; i < corners.size(); i++) {
      if (i > 0) {
        walked += corners.get(i - 1).metresTo(corners.get(i));
      }
      boolean isEnd = i == 0 || i == corners.size() - 1;
      double own =
          isEnd ? usual : line.route().get(i - 1).depth().map(Length::metres).orElse(usual);
      depths.add(new Trench.Depth(walked, own));
    }
    return depths;
  }

  private MinorLosses minor(Line line, Pipe pipe) {
    MinorLosses sum =
        line.fittingLength()
            .map(length -> MinorLosses.ofExtraLength(length.metres()))
            .orElse(MinorLosses.NONE);
    for (FittingCount fitting : line.fittings()) {
      Optional<Loss> loss = catalog.loss(fitting.fitting());
      if (loss.isPresent()) {
        MinorLosses one = law(loss.get(), pipe).in(pipe.bore().metres());
        sum = sum.plus(one.times(fitting.count()));
      }
    }
    return sum;
  }

  /** Strainer, and the tees of a bypass straight through, where the water leg leaves its vessel. */
  private MinorLosses atDumpValve(Line line, Thing from, Pipe pipe) {
    MinorLosses sum = MinorLosses.NONE;
    if (line.service() != Service.WATER_LEG || !(from instanceof Separator separator)) {
      return sum;
    }
    if (separator.dumpValve().hasStrainer()) {
      sum = sum.plus(steel(Fitting.Part.STRAINER, pipe));
    }
    if (separator.dumpValve().hasBypass()) {
      sum = sum.plus(steel(Fitting.Part.TEE, pipe).times(2));
    }
    return sum;
  }

  private MinorLosses steel(Fitting.Part part, Pipe pipe) {
    return catalog
        .parts()
        .fitting(part, Material.STEEL, pipe.nominal())
        .flatMap(fitting -> catalog.loss(fitting.id()))
        .map(loss -> law(loss, pipe).in(pipe.bore().metres()))
        .orElse(MinorLosses.NONE);
  }

  private static FittingLoss law(Loss loss, Pipe pipe) {
    if (loss instanceof Loss.Diameters diameters) {
      return new FittingLoss.EquivalentDiameters(diameters.lengthOverDiameter());
    }
    if (loss instanceof Loss.VelocityHeads heads) {
      return new FittingLoss.FixedK(heads.k());
    }
    Loss.ThreeK threeK = (Loss.ThreeK) loss;
    return new FittingLoss.ThreeK(threeK.k1(), threeK.ki(), threeK.kd(), pipe.nominal().inches());
  }
}
