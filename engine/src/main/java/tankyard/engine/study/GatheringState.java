package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.fluids.FluidModel;
import tankyard.engine.network.Solved;

/** The gathering lines with their flows and pressures. */
public final class GatheringState {
  private final GatheringPlan plan;
  private final Map<String, WellFlow> wells;
  private final Map<String, LineRun> runs;
  private final Solved solved;
  private final Composition mix;
  private final Optional<Warmth> warmth;
  private final FluidModel fluids;

  GatheringState(
      GatheringPlan plan,
      Map<String, WellFlow> wells,
      Map<String, LineRun> runs,
      Solved solved,
      Composition mix,
      Optional<Warmth> warmth,
      FluidModel fluids) {
    this.plan = plan;
    this.wells = wells;
    this.runs = runs;
    this.solved = solved;
    this.mix = mix;
    this.warmth = warmth;
    this.fluids = fluids;
  }

  Composition mix() {
    return mix;
  }

  /** Whether the oil carries the water in a line. */
  public boolean oilCarries(LineRun run) {
    return fluids.oilCarries(mix.waterCut(run.laid().id()));
  }

  Optional<Warmth> warmth() {
    return warmth;
  }

  public Collection<LineRun> runs() {
    return runs.values();
  }

  public Solved.Audit audit() {
    return solved.audit();
  }

  /** Ids of the wells that reach a separator. */
  public List<String> wellIds() {
    return wells.keySet().stream().filter(plan.joints()::contains).toList();
  }

  /** Gauge pressure at a well's stuffing box. */
  public double boxPa(String wellId) {
    return solved.pressurePa().get(wellId);
  }

  /** The lines a well's fluid takes, the larger flow at every parting of ways. */
  List<LineRun> wayOf(String wellId) {
    List<LineRun> way = new ArrayList<>();
    String here = wellId;
    Optional<LineRun> next = outOf(here, way);
    while (next.isPresent()) {
      way.add(next.get());
      here = downstream(next.get());
      next = plan.isSeparator(here) ? Optional.empty() : outOf(here, way);
    }
    return way;
  }

  /** Where a well's fluid ends up; empty where its lines lead nowhere. */
  public Optional<String> separatorOf(String wellId) {
    List<LineRun> way = wayOf(wellId);
    return way.isEmpty()
        ? Optional.empty()
        : Optional.of(downstream(way.get(way.size() - 1))).filter(plan::isSeparator);
  }

  private Optional<LineRun> outOf(String joint, List<LineRun> taken) {
    LineRun best = null;
    for (LineRun run : runs.values()) {
      boolean leaves = upstream(run).equals(joint) && taken.stream().noneMatch(t -> t == run);
      if (leaves && (best == null || flow(run) > flow(best))) {
        best = run;
      }
    }
    return Optional.ofNullable(best);
  }

  private double flow(LineRun run) {
    return Math.abs(solved.flow().get(run.laid().id()));
  }

  private static String upstream(LineRun run) {
    return run.flow() >= 0 ? run.laid().line().from() : run.laid().line().to();
  }

  private static String downstream(LineRun run) {
    return run.flow() >= 0 ? run.laid().line().to() : run.laid().line().from();
  }
}
