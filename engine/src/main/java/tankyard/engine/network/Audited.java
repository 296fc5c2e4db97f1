package tankyard.engine.network;

/**
 * Mass at every joint and energy along every run added up again, after a solve.
 *
 * @param worstMass m3/s left over at the worst joint
 * @param throughput m3/s that goes through all of it
 * @param worstRun the run at which the energy fits worst
 */
record Audited(double worstMass, double throughput, double worstEnergyPa, int worstRun) {
  static Audited of(Circuit circuit, double[] flow, double[] pressure) {
    Topology topology = circuit.topology();
    double[] left = new double[pressure.length];
    double in = 0;
    double out = 0;
    for (int j = 0; j < left.length; j++) {
      left[j] = circuit.inflow()[j];
      in += Math.max(0, left[j]);
      out += Math.max(0, -left[j]);
    }
    double worstEnergy = 0;
    int worstRun = 0;
    for (int i = 0; i < flow.length; i++) {
      left[topology.from(i)] -= flow[i];
      left[topology.to(i)] += flow[i];
      double from = pressure[topology.from(i)];
      double to = pressure[topology.to(i)];
      double misfit = misfit(circuit.link()[i], flow[i], from, to);
      if (!(misfit <= worstEnergy)) {
        worstEnergy = misfit;
        worstRun = i;
      }
    }
    double worstMass = 0;
    for (int j = 0; j < left.length; j++) {
      worstMass = topology.isHeld(j) ? worstMass : Math.max(worstMass, Math.abs(left[j]));
    }
    return new Audited(worstMass, Math.max(in, out), worstEnergy, worstRun);
  }

  /**
   * How far a run's pressures are from its law. A run at rest fits as long as neither end's
   * pressure would set it going: a crest between them holds any less.
   */
  private static double misfit(Link link, double flow, double from, double to) {
    if (flow == 0) {
      double ahead = from - link.upstream(0, to).pressurePa();
      double back = to - link.upstream(-Sweep.STILL, from).pressurePa();
      return Math.max(0, Math.max(ahead, back));
    }
    double law = link.upstream(flow, flow > 0 ? to : from).pressurePa();
    return Math.abs(law - (flow > 0 ? from : to));
  }

  /** Whether it is within what the solver promises (see docs/calculation-basis.md). */
  boolean holds() {
    return worstMass <= 1e-8 * Math.max(throughput, 1e-9) && worstEnergyPa <= 0.01;
  }
}
