package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.network.Layout;
import tankyard.engine.network.Solved;

/** The gathering lines with their flows and pressures. */
public final class GatheringState {
  private static final int NONE = -1;

  private final GatheringPlan plan;
  private final Layout layout;
  private final Gathering.Mixed mixed;
  private final Solved solved;
  private final FluidModel fluids;
  private final List<LineRun> runs = new ArrayList<>();

  GatheringState(GatheringPlan plan, Gathering.Mixed mixed, Solved solved, FluidModel fluids) {
    this.plan = plan;
    this.layout = plan.layout();
    this.mixed = mixed;
    this.solved = solved;
    this.fluids = fluids;
    for (int i = 0; i < plan.lines().size(); i++) {
      runs.add(run(i));
    }
  }

  private LineRun run(int i) {
    double flow = solved.flow(i);
    double downPa = solved.pressurePa(layout.downstream(i, flow));
    GasLink gassy = mixed.gassy().get(i);
    return gassy != null
        ? gassy.run(flow, downPa)
        : LineRun.of(
            plan.lines().get(i),
            mixed.links().get(i).at(flow),
            mixed.words().get(i),
            mixed.fills().get(i),
            downPa);
  }

  Gathering.Mixed mixed() {
    return mixed;
  }

  Solved solved() {
    return solved;
  }

  /** Whether the oil carries the water in a line. */
  public boolean oilCarries(LineRun run) {
    return fluids.oilCarries(mixed.composition().waterCut(layout.run(run.laid().id())));
  }

  /** In drawn order. */
  public List<LineRun> runs() {
    return runs;
  }

  public Solved.Audit audit() {
    return solved.audit();
  }

  /** Ids of the wells that reach a separator. */
  public List<String> wellIds() {
    return plan.wellIds();
  }

  /** Gauge pressure at a well's stuffing box. */
  public double boxPa(String wellId) {
    return solved.pressurePa(wellId);
  }

  /** The lines a well's fluid takes, the larger flow at every parting of ways. */
  List<LineRun> wayOf(String wellId) {
    return numbersOf(wellId).stream().map(runs::get).toList();
  }

  /** Where a well's fluid ends up; empty where its lines lead nowhere. */
  public Optional<String> separatorOf(String wellId) {
    List<Integer> way = numbersOf(wellId);
    if (way.isEmpty()) {
      return Optional.empty();
    }
    int last = way.get(way.size() - 1);
    int end = layout.downstream(last, solved.flow(last));
    return layout.isHeld(end) ? Optional.of(layout.joints().get(end)) : Optional.empty();
  }

  private List<Integer> numbersOf(String wellId) {
    List<Integer> way = new ArrayList<>();
    int here = layout.joint(wellId);
    int next = outOf(here, way);
    while (next != NONE) {
      way.add(next);
      here = layout.downstream(next, solved.flow(next));
      next = layout.isHeld(here) ? NONE : outOf(here, way);
    }
    return way;
  }

  private int outOf(int joint, List<Integer> taken) {
    int best = NONE;
    for (int k = 0; k < layout.degree(joint); k++) {
      int run = layout.runAt(joint, k);
      double flow = solved.flow(run);
      boolean leaves = layout.upstream(run, flow) == joint && !taken.contains(run);
      if (leaves && (best == NONE || Math.abs(flow) > Math.abs(solved.flow(best)))) {
        best = run;
      }
    }
    return best;
  }
}
