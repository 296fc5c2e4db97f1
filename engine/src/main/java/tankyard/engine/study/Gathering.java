package tankyard.engine.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.network.Joint;
import tankyard.engine.network.Network;
import tankyard.engine.network.NetworkSolver;
import tankyard.engine.network.Run;
import tankyard.engine.network.Solved;
import tankyard.engine.units.HeatLoss;
import tankyard.engine.units.Temperature;

/** The gathering lines of one case, solved for given pressures in the separators. */
final class Gathering {
  private static final int MOST_MIXINGS = 8;
  private static final double SAME_CUT = 1e-9;
  private static final double SAME_K = 1e-6;

  private final GatheringPlan plan;
  private final Map<String, WellFlow> wells;
  private final FluidModel fluids;
  private final Temperature temperature;
  private final double sharedSurge;
  private final HeatLoss heatLoss;
  private final double coldest;
  private final double warmest;
  private final Map<Double, LiquidState> byCut = new HashMap<>();
  private final Map<Double, CoolingLiquid> coolingByCut = new HashMap<>();

  Gathering(
      GatheringPlan plan,
      Map<String, WellFlow> wells,
      FluidModel fluids,
      Temperature temperature,
      HeatLoss heatLoss,
      double sharedSurge) {
    this.plan = plan;
    this.wells = wells;
    this.fluids = fluids;
    this.temperature = temperature;
    this.heatLoss = heatLoss;
    this.sharedSurge = sharedSurge;
    double ground = temperature.kelvins();
    this.coldest = heads().reduce(ground, Math::min);
    this.warmest = heads().reduce(ground, Math::max);
  }

  /** Temperatures of what leaves the wells, K, as far as they are known. */
  private DoubleStream heads() {
    return wells.values().stream().flatMapToDouble(w -> w.headK().stream());
  }

  /**
   * Solves it.
   *
   * @param inletPa gauge pressure at each separator's inlet nozzle
   */
  GatheringState at(Map<String, Double> inletPa) {
    return at(inletPa, Composition.even(plan, averageCut()), Optional.empty());
  }

  /** The same, starting from a mixture and warmth that are near: those of another pressure. */
  GatheringState at(Map<String, Double> inletPa, Composition nearMix, Optional<Warmth> nearWarmth) {
    Composition mix = nearMix;
    Optional<Warmth> warmth = nearWarmth;
    Solved solved = solve(mix, warmth, inletPa);
    for (int i = 0; i < MOST_MIXINGS; i++) {
      Composition next = Composition.of(plan, wells, solved, mix);
      Optional<Warmth> warmer = warmth(solved, next);
      boolean same = next.differsFrom(mix) <= SAME_CUT && differ(warmth, warmer) <= SAME_K;
      mix = next;
      warmth = warmer;
      if (same) {
        break;
      }
      solved = solve(mix, warmth, inletPa);
    }
    return new GatheringState(plan, wells, runs(solved, mix, warmth), solved, mix, warmth, fluids);
  }

  /** Empty where no well's temperature is known: then every line is as cold as the ground. */
  private Optional<Warmth> warmth(Solved solved, Composition mix) {
    return coldest == warmest
        ? Optional.empty()
        : Optional.of(Warmth.of(plan, wells, solved, mix, heatLoss, temperature.kelvins()));
  }

  private static double differ(Optional<Warmth> a, Optional<Warmth> b) {
    return b.isEmpty() ? 0 : a.map(b.get()::differsFrom).orElse(Double.POSITIVE_INFINITY);
  }

  private double averageCut() {
    double water = wells.values().stream().mapToDouble(WellFlow::water).sum();
    double all = wells.values().stream().mapToDouble(WellFlow::fluid).sum();
    return all > 0 ? water / all : 1;
  }

  private Solved solve(Composition mix, Optional<Warmth> warmth, Map<String, Double> inletPa) {
    List<Joint> joints = new ArrayList<>();
    for (String id : plan.joints()) {
      WellFlow well = wells.get(id);
      joints.add(
          inletPa.containsKey(id)
              ? Joint.held(id, inletPa.get(id))
              : Joint.free(id, well == null ? 0 : well.fluid()));
    }
    List<Run> runs = new ArrayList<>();
    for (LaidLine line : plan.lines().values()) {
      LineLink link = new LineLink(fill(line, mix, warmth), times(line.id()));
      runs.add(new Run(line.id(), line.line().from(), line.line().to(), link));
    }
    return NetworkSolver.solve(new Network(joints, runs));
  }

  private LiquidState liquid(String lineId, Composition mix) {
    return byCut.computeIfAbsent(mix.waterCut(lineId), cut -> fluids.mixture(cut, temperature));
  }

  private LineFill fill(LaidLine line, Composition mix, Optional<Warmth> warmth) {
    return warmth
        .map(
            w ->
                CoolingPieces.fill(
                    line,
                    cooling(line.id(), mix),
                    w.cooling(line),
                    w.forward(line.id()),
                    w.upstreamK(line.id())))
        .orElseGet(() -> LineFill.even(line, liquid(line.id(), mix)));
  }

  private CoolingLiquid cooling(String lineId, Composition mix) {
    return coolingByCut.computeIfAbsent(
        mix.waterCut(lineId),
        cut -> CoolingLiquid.of(fluids, cut, liquid(lineId, mix), coldest, warmest));
  }

  private double times(String lineId) {
    return ownWell(lineId).map(WellFlow::ownLineTimes).orElse(sharedSurge);
  }

  private String flowWords(String lineId) {
    return ownWell(lineId)
        .map(WellFlow::ownLineWords)
        .orElse(
            sharedSurge == 1
                ? "all its wells together"
                : "all its wells together, x " + sharedSurge + " as if their strokes met");
  }

  private Optional<WellFlow> ownWell(String lineId) {
    return Optional.ofNullable(plan.onlyWell(lineId)).map(wells::get);
  }

  private Map<String, LineRun> runs(Solved solved, Composition mix, Optional<Warmth> warmth) {
    Map<String, LineRun> runs = new LinkedHashMap<>();
    for (LaidLine line : plan.lines().values()) {
      double flow = solved.flow().get(line.id());
      String down = flow >= 0 ? line.line().to() : line.line().from();
      runs.put(
          line.id(),
          LineRun.of(
              line,
              flow * times(line.id()),
              flowWords(line.id()),
              fill(line, mix, warmth),
              solved.pressurePa().get(down)));
    }
    return runs;
  }
}
