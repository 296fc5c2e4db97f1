package tankyard.engine.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.network.Joint;
import tankyard.engine.network.Network;
import tankyard.engine.network.NetworkSolver;
import tankyard.engine.network.Run;
import tankyard.engine.network.Solved;
import tankyard.engine.units.Temperature;

/** The gathering lines of one case, solved for given pressures in the separators. */
final class Gathering {
  private static final int MOST_MIXINGS = 8;
  private static final double SAME_CUT = 1e-9;

  private final GatheringPlan plan;
  private final Map<String, WellFlow> wells;
  private final FluidModel fluids;
  private final Temperature temperature;
  private final double sharedSurge;
  private final Map<Double, LiquidState> byCut = new HashMap<>();

  Gathering(
      GatheringPlan plan,
      Map<String, WellFlow> wells,
      FluidModel fluids,
      Temperature temperature,
      double sharedSurge) {
    this.plan = plan;
    this.wells = wells;
    this.fluids = fluids;
    this.temperature = temperature;
    this.sharedSurge = sharedSurge;
  }

  /**
   * Solves it.
   *
   * @param inletPa gauge pressure at each separator's inlet nozzle
   */
  GatheringState at(Map<String, Double> inletPa) {
    return at(inletPa, Composition.even(plan, averageCut()));
  }

  /** The same, starting from a mixture that is near: that of another pressure. */
  GatheringState at(Map<String, Double> inletPa, Composition near) {
    Composition mix = near;
    Solved solved = solve(mix, inletPa);
    for (int i = 0; i < MOST_MIXINGS; i++) {
      Composition next = Composition.of(plan, wells, solved, mix);
      double change = next.differsFrom(mix);
      mix = next;
      if (change <= SAME_CUT) {
        break;
      }
      solved = solve(mix, inletPa);
    }
    return new GatheringState(plan, wells, runs(solved, mix), solved, mix);
  }

  private double averageCut() {
    double water = wells.values().stream().mapToDouble(WellFlow::water).sum();
    double all = wells.values().stream().mapToDouble(WellFlow::fluid).sum();
    return all > 0 ? water / all : 1;
  }

  private Solved solve(Composition mix, Map<String, Double> inletPa) {
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
      LineLink link = new LineLink(line, liquid(line.id(), mix).liquid(), times(line.id()));
      runs.add(new Run(line.id(), line.line().from(), line.line().to(), link));
    }
    return NetworkSolver.solve(new Network(joints, runs));
  }

  private LiquidState liquid(String lineId, Composition mix) {
    return byCut.computeIfAbsent(mix.waterCut(lineId), cut -> fluids.mixture(cut, temperature));
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

  private Map<String, LineRun> runs(Solved solved, Composition mix) {
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
              liquid(line.id(), mix),
              solved.pressurePa().get(down)));
    }
    return runs;
  }
}
