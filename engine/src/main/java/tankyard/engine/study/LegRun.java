package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Length;

/**
 * A leg from a separator to a tank at one rate, worked from the tank back. Lines that other
 * separators send through too carry what all of them send at once.
 *
 * @param runs its lines, from the separator to the tank
 * @param tank where it ends
 * @param rate m3/s of the separator's own
 * @param endM elevation whose liquid the leg must reach: the inlet, or the full tank's level
 */
public record LegRun(
    List<LineRun> runs, Tank tank, double rate, String rateWords, LiquidState liquid, double endM) {
  private static final double OWN_RATE = 1e-9;

  public LegRun {
    runs = List.copyOf(runs);
  }

  /**
   * Worked out from the tank back.
   *
   * @param beside m3/s of other vessels through each line, by its id
   */
  static LegRun of(
      Leg leg,
      double rate,
      String words,
      LiquidState liquid,
      double tankGroundM,
      Map<String, Double> beside) {
    Tank tank = leg.tank();
    LaidLine last = leg.lines().get(leg.lines().size() - 1);
    double inletM = last.pegs().get(last.pegs().size() - 1).elevationM();
    double endM =
        tank.entry() == Tank.Entry.TOP
            ? inletM
            : Math.max(inletM, tankGroundM + tank.overflowHeight().metres());
    double pressure = liquid.liquid().staticPascals(endM - inletM);
    List<LineRun> runs = new ArrayList<>();
    for (int i = leg.lines().size() - 1; i >= 0; i--) {
      LaidLine line = leg.lines().get(i);
      double others = beside.getOrDefault(line.id(), 0.0);
      String what = others > 0 ? words + ", and of the others that share the line" : words;
      LineRun run = LineRun.of(line, rate + others, what, liquid, pressure);
      runs.add(0, run);
      pressure = run.march().upstreamPascals();
    }
    return new LegRun(runs, tank, rate, words, liquid, endM);
  }

  /** Whether other vessels send through some of its lines. */
  public boolean isShared() {
    return !sharedLines().isEmpty();
  }

  /** Names of the lines other vessels send through too. */
  public List<String> sharedLines() {
    return runs.stream()
        .filter(r -> Math.abs(r.flow()) > rate * (1 + OWN_RATE))
        .map(r -> r.laid().line().name())
        .toList();
  }

  /** Level of its tank at which the pump stops. */
  public Length pumpOff() {
    return Storage.pumpOff(tank);
  }

  /** Gauge pressure the leg needs at its start. */
  public double needPa() {
    return runs.get(0).march().upstreamPascals();
  }

  /** Elevation of its start. */
  public double startM() {
    return runs.get(0).laid().pegs().get(0).elevationM();
  }

  /** The line whose crest governs; empty where the tank does. */
  public Optional<LineRun> crestLine() {
    return runs.stream().filter(r -> r.march().control().isPresent()).findFirst();
  }

  /** Elevation that governs: the crest's, or the tank's. */
  public double controlM() {
    return crestLine().map(r -> r.march().control().orElseThrow().elevationM()).orElse(endM);
  }

  /** Line loss from its start to what governs. */
  public double frictionPa() {
    double sum = 0;
    for (LineRun run : runs) {
      sum += run.march().frictionPascals();
      if (run.march().control().isPresent()) {
        break;
      }
    }
    return sum;
  }

  /** Line loss over its whole length. */
  public double wholeFrictionPa() {
    return runs.stream().mapToDouble(this::frictionPa).sum();
  }

  private double frictionPa(LineRun run) {
    return run.laid().law().friction(liquid.liquid()).drop(Math.abs(run.flow())).pascals();
  }

  /**
   * Every point on the way, between its start and its end, past which the leg needs less pressure
   * at its start than to get there: the top of a hill that falls faster beyond than the line loses,
   * the far edge of a ridge, the shoulder of a slope. Where the fall beyond is gentler than the
   * loss, the leg stays full over it and a point farther on holds it instead.
   */
  public List<HighPoint> highPoints() {
    List<HighPoint> way = way();
    List<HighPoint> found = new ArrayList<>();
    for (int i = 1; i + 1 < way.size(); i++) {
      if (needPa(way.get(i)) > needPa(way.get(i - 1)) && fallsAfter(way, i)) {
        found.add(way.get(i));
      }
    }
    return found;
  }

  private boolean fallsAfter(List<HighPoint> way, int i) {
    double here = needPa(way.get(i));
    int next = i + 1;
    while (next < way.size() && needPa(way.get(next)) == here) {
      next++;
    }
    return next < way.size() && needPa(way.get(next)) < here;
  }

  /** Gauge pressure at the leg's start that lifts and pushes its liquid that far. */
  private double needPa(HighPoint point) {
    return liquid.liquid().staticPascals(point.elevationM() - startM()) + point.frictionPa();
  }

  /** Every peg from the start to the end, with the line loss up to it. */
  private List<HighPoint> way() {
    List<HighPoint> way = new ArrayList<>();
    double before = 0;
    for (LineRun run : runs) {
      double whole = frictionPa(run);
      double length = run.laid().law().lengthM();
      List<LaidLine.Peg> pegs = run.laid().pegs();
      // A line starts where the one before it ended.
      for (LaidLine.Peg peg : way.isEmpty() ? pegs : pegs.subList(1, pegs.size())) {
        way.add(
            new HighPoint(
                run.laid(),
                LaidLine.feet(peg.mapM()),
                peg.elevationM(),
                before + whole * peg.pipeM() / length));
      }
      before += whole;
    }
    return way;
  }

  /**
   * A point of a leg that may hold it.
   *
   * @param along the route on the map, from the line's start
   */
  public record HighPoint(LaidLine line, Length along, double elevationM, double frictionPa) {}
}
