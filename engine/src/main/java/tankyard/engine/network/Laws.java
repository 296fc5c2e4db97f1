package tankyard.engine.network;

/**
 * Every run's law at given flows and pressures. Kept in rows of numbers and not as one record a
 * run, so that a round leaves nothing behind to be collected.
 */
final class Laws {
  /** A run that loses nothing would leave its flow undetermined, Pa/(m3/s). */
  private static final double LEAST_SLOPE = 1e-3;

  private static final double CUT = 1e30;

  private final Circuit circuit;
  private final double[] upstreamPa;
  private final double[] perFlow;
  private final double[] perDownstream;

  Laws(Circuit circuit) {
    this.circuit = circuit;
    int runs = circuit.link().length;
    upstreamPa = new double[runs];
    perFlow = new double[runs];
    perDownstream = new double[runs];
  }

  /** Works them all out; the worst misfit to the pressures, Pa. */
  double look(double[] flow, double[] pressure) {
    Topology topology = circuit.topology();
    double worst = 0;
    for (int i = 0; i < flow.length; i++) {
      double q = flow[i];
      Link.Upstream at = circuit.link()[i].upstream(q, pressure[topology.downstream(i, q)]);
      upstreamPa[i] = at.pressurePa();
      perFlow[i] = at.perFlow();
      perDownstream[i] = at.perDownstream();
      worst = Math.max(worst, Math.abs(upstreamPa[i] - pressure[topology.upstream(i, q)]));
    }
    return worst;
  }

  /** Puts another slope in the place of the law's own. */
  void bend(int run, double slope) {
    perFlow[run] = slope;
  }

  double upstreamPa(int run) {
    return upstreamPa[run];
  }

  /** How much each run rubs. */
  double[] perFlow() {
    return perFlow;
  }

  /** Whether a crest cuts any run, so that what is beyond can't be told from what is before it. */
  boolean isCut() {
    for (double felt : perDownstream) {
      if (felt == 0) {
        return true;
      }
    }
    return false;
  }

  /** How much each run rubs, those that are cut more than any other. */
  double[] cutLast() {
    double[] weights = perFlow.clone();
    for (int i = 0; i < weights.length; i++) {
      weights[i] = perDownstream[i] == 0 ? CUT : weights[i];
    }
    return weights;
  }

  double perFlow(int run) {
    return perFlow[run];
  }

  /** How much flow a pascal makes, m3/s. */
  double conductance(int run) {
    return conductanceOf(perFlow[run]);
  }

  static double conductanceOf(double perFlow) {
    return 1 / Math.max(perFlow, LEAST_SLOPE);
  }

  double perDownstream(int run) {
    return perDownstream[run];
  }
}
