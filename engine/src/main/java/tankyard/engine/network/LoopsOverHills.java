package tankyard.engine.network;

import java.util.function.IntFunction;
import tankyard.engine.network.LoopNewton.Balanced;

/**
 * Solves loops, over hills too. Newton's method alone can go round in circles where a crest holds a
 * run: a little flow more and it is flowed over, a little less and it stands. Then what a crest
 * lets pass is made a lot at first and less step by step, each from the answer before, down to what
 * {@link Blocked} stands for.
 */
final class LoopsOverHills {
  /** Pa/(m3/s) of a crest that hardly holds: about what a line loses. */
  private static final double EASIEST = 1e8;

  private static final double LARGEST_STEP = 10;
  private static final double SMALLEST_STEP = 1.02;

  private final LoopPart loops;
  private final Circuit circuit;
  private final IntFunction<String> runId;

  /**
   * The loops, not solved yet.
   *
   * @param circuit of the loops
   * @param runId a run's id by its number in the whole network, for what is said when it fails
   */
  LoopsOverHills(LoopPart loops, Circuit circuit, IntFunction<String> runId) {
    this.loops = loops;
    this.circuit = circuit;
    this.runId = runId;
  }

  /** From flows that balance and pressures near them, by the numbers of the loops. */
  Balanced solve(double[] flow, double[] pressure) {
    LoopNewton direct = newton(circuit, flow, pressure).evenly();
    return settles(direct) ? direct.balanced() : stepByStep(flow, pressure).balanced();
  }

  private LoopNewton newton(Circuit of, double[] flow, double[] pressure) {
    return new LoopNewton(loops, of, flow.clone(), pressure.clone(), runId);
  }

  private static boolean settles(LoopNewton newton) {
    try {
      return newton.settles();
    } catch (Unsolved noAnswerOnTheWay) {
      return false;
    }
  }

  private LoopNewton stepByStep(double[] flow, double[] pressure) {
    double resistance = EASIEST;
    LoopNewton known = newton(holding(resistance), flow, pressure).evenly();
    boolean settled = settles(known);
    double step = LARGEST_STEP;
    while (settled && resistance < Leak.RESISTANCE) {
      double next = Math.min(Leak.RESISTANCE, resistance * step);
      LoopNewton harder = newton(holding(next), seeping(known, resistance, next), known.pressure());
      if (settles(harder)) {
        known = harder;
        resistance = next;
        step = LARGEST_STEP;
      } else {
        step = Math.sqrt(step);
        settled = step > SMALLEST_STEP;
      }
    }
    if (!settled) {
      throw new Unsolved(
          "No steady flow was found in the loops over the crests or through the valves of "
              + String.join(", ", known.held(resistance)));
    }
    return known;
  }

  /** The loops, with crests that hold so hard. */
  private Circuit holding(double resistance) {
    Link[] link = circuit.link().clone();
    for (int i = 0; i < link.length; i++) {
      link[i] = link[i] instanceof Blocked blocked ? blocked.holding(resistance) : link[i];
    }
    return new Circuit(circuit.topology(), circuit.inflow(), circuit.heldPa(), link);
  }

  /** The flows that go with the pressures that are known, where crests let less pass. */
  private double[] seeping(LoopNewton known, double before, double after) {
    double[] flow = known.flow().clone();
    for (int i = 0; i < flow.length; i++) {
      if (known.perFlow(i) == before) {
        flow[i] *= before / after;
      }
    }
    return flow;
  }
}
