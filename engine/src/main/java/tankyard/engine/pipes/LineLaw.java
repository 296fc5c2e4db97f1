package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tankyard.engine.fluids.Drop;
import tankyard.engine.fluids.FlowLaw;
import tankyard.engine.fluids.Liquid;

/**
 * Pressure along one line, of one liquid or of one for each run, from the downstream end up to
 * where the flow comes from.
 *
 * <p>Friction and height are added station by station. Where the sum falls below zero gauge the
 * pipe can't hold full: air gets in, the pressure there is that of the air, and the fall beyond it
 * pulls nothing. The most upstream such station is the control point, and the upstream pressure
 * depends only on what lies between it and the upstream end. Trusting the siphon instead would ask
 * for a vacuum that gassy oil-field water and a tank's open end don't hold.
 */
public final class LineLaw {
  private final List<PipeRun> runs;
  private final Stations stations;
  private final double lengthM;
  private final double volumeM3;

  private LineLaw(List<PipeRun> runs) {
    this.runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new IllegalArgumentException("A line needs one run of pipe at least");
    }
    stations = new Stations(this.runs);
    lengthM = this.runs.stream().mapToDouble(r -> r.path().lengthM()).sum();
    volumeM3 = this.runs.stream().mapToDouble(PipeRun::volumeM3).sum();
  }

  public static LineLaw of(PipeRun run) {
    return new LineLaw(List.of(run));
  }

  /** Several sizes one after the other, in the line's own direction. */
  public static LineLaw of(List<PipeRun> runs) {
    return new LineLaw(runs);
  }

  /** The same line drawn from its end to its start. */
  public LineLaw reversed() {
    List<PipeRun> other = new ArrayList<>();
    for (PipeRun run : runs) {
      other.add(0, new PipeRun(run.boreM(), run.roughnessM(), run.path().reversed(), run.minor()));
    }
    return new LineLaw(other);
  }

  public List<PipeRun> runs() {
    return runs;
  }

  public double lengthM() {
    return lengthM;
  }

  public double volumeM3() {
    return volumeM3;
  }

  /**
   * The same line with its runs parted, so that each part may hold a liquid of its own.
   *
   * @param distancesM from the line's start, rising, none at the end of a run
   */
  public LineLaw cutAt(List<Double> distancesM) {
    List<PipeRun> parts = new ArrayList<>();
    double before = 0;
    for (PipeRun run : runs) {
      double length = run.path().lengthM();
      double at = 0;
      for (double distance : distancesM) {
        double here = distance - before;
        if (here > at && here < length) {
          parts.add(run.between(at, here));
          at = here;
        }
      }
      parts.add(at == 0 ? run : run.between(at, length));
      before += length;
    }
    return new LineLaw(parts);
  }

  /** From the line's start to its end. */
  public double riseM() {
    return runs.stream().mapToDouble(r -> r.path().riseM()).sum();
  }

  /** Friction alone, for a line that runs full all the way. */
  public FlowLaw friction(Liquid liquid) {
    return runs.stream()
        .<FlowLaw>map(run -> new PipeFlow(run, liquid))
        .reduce((flow) -> Drop.NONE, FlowLaw::then);
  }

  /** The line at one flow, which can then be marched from many pressures. */
  public LineAtFlow at(double flowM3PerS, Liquid liquid) {
    return at(flowM3PerS, Collections.nCopies(runs.size(), liquid));
  }

  /**
   * The same where it does not hold one liquid all along.
   *
   * @param liquids one for each run
   */
  public LineAtFlow at(double flowM3PerS, List<Liquid> liquids) {
    if (liquids.size() != runs.size()) {
      throw new IllegalArgumentException(
          liquids.size() + " liquids for " + runs.size() + " runs of pipe");
    }
    return new LineAtFlow(this, liquids, flowM3PerS);
  }

  /**
   * Marches the line.
   *
   * @param flowM3PerS positive from the line's start to its end; standing still counts as positive
   * @param downstreamPascals gauge, at the end where the flow leaves
   */
  public MarchResult march(double flowM3PerS, Liquid liquid, double downstreamPascals) {
    return at(flowM3PerS, liquid).march(downstreamPascals);
  }

  Stations stations() {
    return stations;
  }
}
