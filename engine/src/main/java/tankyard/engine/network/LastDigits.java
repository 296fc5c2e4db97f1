package tankyard.engine.network;

/**
 * Flows and pressures near enough to the answer, brought to the last digit.
 *
 * <p>What rounding left over at the joints is put on a tree of the runs that rub least, where it
 * costs next to no pressure (beside a huge pipe a tiny one would feel it), and the pressures are
 * taken anew along them, round those that a crest cuts. What misfit is left then stands along the
 * runs beside the tree, and is taken out of them as loops are corrected by hand.
 */
final class LastDigits {
  private static final int MOST_PASSES = 60;

  private final Circuit circuit;
  private final SpanningTree smooth;
  private final Ways ways;
  private double[] flow;
  private double[] pressure;
  private Audited audited;

  /**
   * Of a solution nearly found.
   *
   * @param laws as they were last looked at
   */
  LastDigits(Circuit circuit, double[] nearFlow, double[] nearPressure, Laws laws) {
    this.circuit = circuit;
    smooth = new SpanningTree(circuit.topology(), laws.perFlow());
    ways =
        laws.isCut() ? new SpanningTree(circuit.topology(), laws.cutLast()).ways() : smooth.ways();
    flow = smooth.balanced(circuit.inflow(), nearFlow);
    pressure = Sweep.pressures(circuit, flow, ways);
    audited = Audited.of(circuit, flow, pressure);
    ease();
    keepIfBetter(flow, nearPressure);
    keepIfBetter(nearFlow, nearPressure);
  }

  /**
   * What a crest lets pass is so little that rounding shows in its pressure, and beyond a crest
   * that is flowed over a sweep can't tell what stands; the loops' own solution can.
   */
  private void keepIfBetter(double[] nearFlow, double[] nearPressure) {
    if (!audited.holds()) {
      Audited near = Audited.of(circuit, nearFlow, nearPressure);
      if (near.holds()) {
        flow = nearFlow;
        pressure = nearPressure;
        audited = near;
      }
    }
  }

  private void ease() {
    double share = 0.5;
    for (int pass = 0; pass < MOST_PASSES && !audited.holds(); pass++) {
      double[] nextFlow = smooth.balanced(circuit.inflow(), eased(share));
      double[] nextPressure = Sweep.pressures(circuit, nextFlow, ways);
      Audited next = Audited.of(circuit, nextFlow, nextPressure);
      if (next.worstEnergyPa() < audited.worstEnergyPa()) {
        flow = nextFlow;
        pressure = nextPressure;
        audited = next;
      } else {
        share /= 2;
      }
    }
  }

  /** A share of the misfit of every run beside the tree taken out of it. */
  private double[] eased(double share) {
    Topology topology = circuit.topology();
    double[] eased = flow.clone();
    for (int i = 0; i < eased.length; i++) {
      if (!smooth.has(i)) {
        double q = flow[i];
        Link.Upstream at = circuit.link()[i].upstream(q, pressure[topology.downstream(i, q)]);
        double misfit = at.pressurePa() - pressure[topology.upstream(i, q)];
        double change = share * misfit * Laws.conductanceOf(at.perFlow());
        eased[i] = q >= 0 ? q - change : q + change;
      }
    }
    return eased;
  }

  double[] flow() {
    return flow;
  }

  double[] pressure() {
    return pressure;
  }

  Audited audited() {
    return audited;
  }
}
