package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.network.Layout;
import tankyard.engine.network.Link;
import tankyard.engine.network.Network;
import tankyard.engine.network.NetworkSolver;
import tankyard.engine.network.Solved;
import tankyard.engine.units.HeatLoss;
import tankyard.engine.units.Temperature;

/**
 * The gathering lines of one case, solved for given pressures in the separators. What the pressures
 * leave as it is (in a tree that is every flow, mixture and friction) is taken over from a state
 * that was solved before.
 */
final class Gathering {
  private static final int MOST_MIXINGS = 8;
  private static final double SAME_CUT = 1e-9;
  private static final double SAME_K = 1e-6;

  private final GatheringPlan plan;
  private final Layout layout;
  private final FluidModel fluids;
  private final Temperature temperature;
  private final HeatLoss heatLoss;
  private final double sharedSurge;
  private final double coldest;
  private final double warmest;

  /** At each joint; null where there is none. */
  private final WellFlow[] wells;

  /** The one well that has each line to itself; null where several share it. */
  private final WellFlow[] ownWell;

  private final double[] inflow;
  private final double averageCut;
  private final double averageGas;
  private final Optional<LeaseGas> gas;

  Gathering(
      GatheringPlan plan,
      Map<String, WellFlow> wells,
      FluidModel fluids,
      Temperature temperature,
      HeatLoss heatLoss,
      double sharedSurge,
      Optional<LeaseGas> gas) {
    this.plan = plan;
    this.layout = plan.layout();
    this.fluids = fluids;
    this.temperature = temperature;
    this.heatLoss = heatLoss;
    this.sharedSurge = sharedSurge;
    double ground = temperature.kelvins();
    this.coldest = heads(wells.values()).reduce(ground, Math::min);
    this.warmest = heads(wells.values()).reduce(ground, Math::max);
    this.wells = layout.joints().stream().map(wells::get).toArray(WellFlow[]::new);
    Map<String, String> onlyWells = plan.onlyWells(making(wells));
    this.ownWell =
        plan.lines().stream()
            .map(line -> wells.get(onlyWells.getOrDefault(line.id(), "")))
            .toArray(WellFlow[]::new);
    inflow = new double[this.wells.length];
    for (int j = 0; j < inflow.length; j++) {
      inflow[j] = this.wells[j] == null || layout.isHeld(j) ? 0 : this.wells[j].fluid();
    }
    this.gas = gas;
    averageCut = averageCut(wells.values());
    averageGas = averageGas(wells.values());
  }

  private static Set<String> making(Map<String, WellFlow> wells) {
    return wells.entrySet().stream()
        .filter(e -> e.getValue().makesSomething())
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  /** Temperatures of what leaves the wells, K, as far as they are known. */
  private static DoubleStream heads(Collection<WellFlow> wells) {
    return wells.stream().flatMapToDouble(w -> w.headK().stream());
  }

  private static double averageCut(Collection<WellFlow> wells) {
    double water = wells.stream().mapToDouble(WellFlow::water).sum();
    double all = wells.stream().mapToDouble(WellFlow::fluid).sum();
    return all > 0 ? water / all : 1;
  }

  /** Standard m3 of gas for each m3 of liquid. */
  private static double averageGas(Collection<WellFlow> wells) {
    double all = wells.stream().mapToDouble(WellFlow::fluid).sum();
    return all > 0 ? wells.stream().mapToDouble(WellFlow::gas).sum() / all : 0;
  }

  /**
   * Solves it.
   *
   * @param inletPa gauge pressure at each separator's inlet nozzle
   */
  GatheringState at(Map<String, Double> inletPa) {
    double[] flow = layout.treeFlows(inflow);
    Composition even = Composition.even(layout, averageCut, averageGas);
    if (layout.isTree()) {
      Composition mix = Composition.of(layout, wells, flow, even);
      return solve(mixed(mix, warmth(flow, mix), flow), inletPa);
    }
    return mix(mixed(even, Optional.empty(), flow), inletPa);
  }

  /** The same, starting from a state that is near: that of another pressure. */
  GatheringState at(Map<String, Double> inletPa, GatheringState near) {
    return layout.isTree() ? near.under(solved(near.mixed(), inletPa)) : mix(near.mixed(), inletPa);
  }

  /** Flows, mixtures and warmth in turn, until they fit. */
  private GatheringState mix(Mixed start, Map<String, Double> inletPa) {
    GatheringState state = solve(start, inletPa);
    for (int i = 0; i < MOST_MIXINGS; i++) {
      Mixed before = state.mixed();
      double[] flow = state.solved().flows();
      Composition mix = Composition.of(layout, wells, flow, before.composition());
      Optional<Warmth> warmth = warmth(flow, mix);
      Mixed next = mixed(mix, warmth, flow);
      boolean same =
          mix.differsFrom(before.composition()) <= SAME_CUT
              && differ(before.warmth(), warmth) <= SAME_K;
      if (same) {
        return new GatheringState(plan, next, state.solved(), fluids);
      }
      state = solve(next, inletPa);
    }
    return state;
  }

  /** Empty where no well's temperature is known: then every line is as cold as the ground. */
  private Optional<Warmth> warmth(double[] flow, Composition mix) {
    return coldest == warmest
        ? Optional.empty()
        : Optional.of(Warmth.of(plan, wells, flow, mix, heatLoss, temperature.kelvins()));
  }

  private static double differ(Optional<Warmth> a, Optional<Warmth> b) {
    return b.isEmpty() ? 0 : a.map(b.get()::differsFrom).orElse(Double.POSITIVE_INFINITY);
  }

  private GatheringState solve(Mixed mixed, Map<String, Double> inletPa) {
    return new GatheringState(plan, mixed, solved(mixed, inletPa), fluids);
  }

  private Solved solved(Mixed mixed, Map<String, Double> inletPa) {
    double[] held = new double[inflow.length];
    for (int j = 0; j < held.length; j++) {
      held[j] = layout.isHeld(j) ? inletPa.get(layout.joints().get(j)) : 0;
    }
    return NetworkSolver.solve(new Network(layout, inflow, held, mixed.network()));
  }

  /** Every line with what stands in it, worked out at flows that are near. */
  private Mixed mixed(Composition mix, Optional<Warmth> warmth, double[] flow) {
    Fillings fillings = new Fillings(mix, warmth);
    List<LineFill> fills = new ArrayList<>();
    List<LineLink> links = new ArrayList<>();
    List<String> words = new ArrayList<>();
    Map<Integer, GasLink> gassy = new HashMap<>();
    for (int i = 0; i < flow.length; i++) {
      LineFill fill = fillings.of(i);
      double times = ownWell[i] == null ? sharedSurge : ownWell[i].ownLineTimes();
      fills.add(fill);
      links.add(new LineLink(fill.at(flow[i] * times), times));
      words.add(ownWell[i] == null ? sharedWords() : ownWell[i].ownLineWords());
      if (gas.isPresent() && mix.gasPerLiquid(i) > 0 && plan.flowIsGiven(i)) {
        gassy.put(i, gasLink(i, mix, fill, links.get(i), words.get(i)));
      }
    }
    return new Mixed(mix, warmth, fills, links, words, gassy);
  }

  private GasLink gasLink(int run, Composition mix, LineFill fill, LineLink full, String words) {
    return new GasLink(
        plan.lines().get(run),
        fill,
        full,
        words,
        mix.waterCut(run),
        mix.gasPerLiquid(run),
        gas.orElseThrow());
  }

  private String sharedWords() {
    return sharedSurge == 1
        ? "all its wells together"
        : "all its wells together, x " + sharedSurge + " as if their strokes met";
  }

  /**
   * What stands in the lines of one mixture; lines with the same share of water share its liquid.
   */
  private final class Fillings {
    private final Composition mix;
    private final Optional<Warmth> warmth;
    private final Map<Double, LiquidState> byCut = new HashMap<>();
    private final Map<Double, CoolingLiquid> coolingByCut = new HashMap<>();

    Fillings(Composition mix, Optional<Warmth> warmth) {
      this.mix = mix;
      this.warmth = warmth;
    }

    LineFill of(int run) {
      LaidLine line = plan.lines().get(run);
      return warmth
          .map(
              w ->
                  CoolingPieces.fill(
                      line, cooling(run), w.cooling(run), w.forward(run), w.upstreamK(run)))
          .orElseGet(() -> LineFill.even(line, liquid(run)));
    }

    private LiquidState liquid(int run) {
      return byCut.computeIfAbsent(mix.waterCut(run), cut -> fluids.mixture(cut, temperature));
    }

    private CoolingLiquid cooling(int run) {
      return coolingByCut.computeIfAbsent(
          mix.waterCut(run), cut -> CoolingLiquid.of(fluids, cut, liquid(run), coldest, warmest));
    }
  }

  /**
   * What is in the lines.
   *
   * @param fills what stands in each
   * @param links each line full of liquid
   * @param words why each line carries what it does
   * @param gassy lines by number that gas comes down, and whose flow no pressure changes
   */
  record Mixed(
      Composition composition,
      Optional<Warmth> warmth,
      List<LineFill> fills,
      List<LineLink> links,
      List<String> words,
      Map<Integer, GasLink> gassy) {

    /** What the network is solved with. */
    List<Link> network() {
      List<Link> all = new ArrayList<>(links);
      gassy.forEach(all::set);
      return all;
    }
  }
}
