package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.network.Layout;
import tankyard.engine.network.Solved;

/** The gathering lines with their flows and pressures. */
public final class GatheringState {
  /** Short of what its crest asks for by more than the solver leaves. */
  private static final double HELD_PA = 1;

  private final GatheringPlan plan;
  private final Layout layout;
  private final Gathering.Mixed mixed;
  private final Solved solved;
  private final FluidModel fluids;
  private final Ways ways;
  private final List<LineRun> runs = new ArrayList<>();

  GatheringState(GatheringPlan plan, Gathering.Mixed mixed, Solved solved, FluidModel fluids) {
    this(plan, mixed, solved, fluids, new Ways(plan.layout(), solved));
  }

  private GatheringState(
      GatheringPlan plan, Gathering.Mixed mixed, Solved solved, FluidModel fluids, Ways ways) {
    this.plan = plan;
    this.layout = plan.layout();
    this.mixed = mixed;
    this.solved = solved;
    this.fluids = fluids;
    this.ways = ways;
    for (int i = 0; i < plan.lines().size(); i++) {
      runs.add(run(i));
    }
  }

  /** The same flows and mixtures under other pressures. */
  GatheringState under(Solved other) {
    return new GatheringState(plan, mixed, other, fluids, ways);
  }

  private LineRun run(int i) {
    double flow = solved.flow(i);
    double downPa = solved.pressurePa(layout.downstream(i, flow));
    GasLink gassy = mixed.gassy().get(i);
    if (gassy != null) {
      return gassy.run(flow, downPa);
    }
    LineRun run =
        LineRun.of(
            plan.lines().get(i),
            mixed.links().get(i).at(flow),
            mixed.words().get(i),
            mixed.fills().get(i),
            downPa);
    double upPa = solved.pressurePa(layout.upstream(i, flow));
    return run.march().isCut() && upPa < run.march().upstreamPascals() - HELD_PA ? held(i) : run;
  }

  private LineRun held(int i) {
    return LineRun.held(
        plan.lines().get(i),
        mixed.fills().get(i),
        solved.pressurePa(layout.from(i)),
        solved.pressurePa(layout.to(i)));
  }

  Gathering.Mixed mixed() {
    return mixed;
  }

  Solved solved() {
    return solved;
  }

  /** Whether the oil carries the water in a line. */
  public boolean oilCarries(LineRun run) {
    return fluids.oilCarries(mixed.composition().waterCut(number(run)));
  }

  /** All that fluid of some wells runs through. */
  Downstream downstream(Collection<String> wells) {
    return Downstream.of(layout, plan.lines(), solved, wells);
  }

  /** The warmest of what flows into a vessel, as warm as it gets there, K; empty without any. */
  OptionalDouble warmestInto(String vesselId) {
    return runs.stream()
        .filter(r -> r.flow() != 0)
        .filter(r -> lastJoint(r).equals(vesselId))
        .mapToDouble(r -> r.flow() > 0 ? r.fill().endK() : r.fill().startK())
        .max();
  }

  private static String lastJoint(LineRun run) {
    return run.flow() > 0 ? run.laid().line().to() : run.laid().line().from();
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
    return ways.of(wellId).stream().map(runs::get).toList();
  }

  /** Numbers of those lines in {@link #runs()}. */
  List<Integer> lineNumbersOf(String wellId) {
    return ways.of(wellId);
  }

  /** A line and those its fluid takes after it, the larger flow at every parting. */
  public List<LineRun> wayOn(LineRun run) {
    return ways.from(number(run)).stream().map(runs::get).toList();
  }

  /** Where a line's fluid ends up; empty where it leads nowhere. */
  public Optional<String> endOf(LineRun run) {
    return ways.endOf(ways.from(number(run)));
  }

  private int number(LineRun run) {
    return layout.run(run.laid().id());
  }

  /** Where a well's fluid ends up; empty where its lines lead nowhere. */
  public Optional<String> separatorOf(String wellId) {
    return ways.endOf(wellId);
  }
}
