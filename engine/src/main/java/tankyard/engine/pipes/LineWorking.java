package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The workings of a marched line in field units: psi, ft, in, bbl/d, cP. */
public final class LineWorking {
  private final LineLaw line;
  private final double flowM3PerS;
  private final List<Liquid> liquids;
  private final MarchResult march;

  /** Of {@code march}, which came from {@code line.march(flowM3PerS, liquid, ...)}. */
  public LineWorking(LineLaw line, double flowM3PerS, Liquid liquid, MarchResult march) {
    this(line, flowM3PerS, Collections.nCopies(line.runs().size(), liquid), march);
  }

  /** The same with a liquid for each run, all of one weight. */
  public LineWorking(LineLaw line, double flowM3PerS, List<Liquid> liquids, MarchResult march) {
    this.line = line;
    this.flowM3PerS = flowM3PerS;
    this.liquids = liquids;
    this.march = march;
  }

  /** The rise from the upstream end to the control point or the downstream end. */
  public Computed<Pressure> lift() {
    Liquid liquid = liquids.get(0);
    double riseM = march.staticPascals() / liquid.staticPascals(1);
    boolean crest = march.control().isPresent();
    return RunLoss.lift(
        liquid, riseM, crest ? "rise to the high point" : "rise from one end to the other");
  }

  /** Friction over the same stretch. */
  public Computed<Pressure> friction() {
    return Computed.of(Pressure.psiFromPascals(march.frictionPascals()), this::frictionWorking)
        .with(cautions());
  }

  /** One run of the line, as if it were full. */
  public RunLoss run(int index) {
    return new RunLoss(line.runs().get(index), liquids.get(index), flowM3PerS);
  }

  private Working frictionWorking() {
    List<Working> runs = new ArrayList<>();
    for (int r = 0; r < line.runs().size(); r++) {
      double share = share(r);
      if (share > 0) {
        runs.add(run(r).frictionWorking(share));
      }
    }
    return runs.size() == 1 ? runs.get(0) : sum(runs);
  }

  private static Working sum(List<Working> runs) {
    StringBuilder formula = new StringBuilder("0");
    List<Term> terms = new ArrayList<>();
    for (Working run : runs) {
      String symbol = "dp" + (terms.size() + 1);
      formula.append("+").append(symbol);
      terms.add(Term.of(symbol, "friction of run " + (terms.size() + 1), run.value(), Unit.PSI));
    }
    return new Working("Friction", "dp", formula.toString(), terms, Unit.PSI, RunLoss.DARCY, runs);
  }

  /** How much of a run lies between the upstream end and the control point. */
  private double share(int r) {
    double from = 0;
    for (int k = 0; k < r; k++) {
      from += line.runs().get(k).path().lengthM();
    }
    double length = line.runs().get(r).path().lengthM();
    boolean forward = flowM3PerS >= 0;
    double all = line.lengthM();
    double cut = march.control().map(ControlPoint::distanceM).orElse(forward ? all : 0);
    double covered = forward ? cut - from : from + length - cut;
    return Math.min(1, Math.max(0, covered / length));
  }

  private List<Caution> cautions() {
    Set<Caution> said = new LinkedHashSet<>();
    List<FlowState> flows = march.flows();
    for (int r = 0; r < line.runs().size(); r++) {
      said.addAll(PipeCautions.of(line.runs().get(r), flows.get(r)));
    }
    return List.copyOf(said);
  }
}
