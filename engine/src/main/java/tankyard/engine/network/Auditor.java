package tankyard.engine.network;

/** Adds up mass at every joint and energy along every run again, after a solve. */
final class Auditor {
  private Auditor() {}

  static Solved.Audit audit(Network network, double[] flow, double[] pressure, int rounds) {
    Layout layout = network.layout();
    double[] left = new double[pressure.length];
    double in = 0;
    double out = 0;
    for (int j = 0; j < left.length; j++) {
      left[j] = network.inflow(j);
      in += Math.max(0, left[j]);
      out += Math.max(0, -left[j]);
    }
    double worstEnergy = 0;
    int worstRun = 0;
    for (int i = 0; i < flow.length; i++) {
      left[layout.from(i)] -= flow[i];
      left[layout.to(i)] += flow[i];
      double below = pressure[layout.downstream(i, flow[i])];
      double law = network.link(i).upstream(flow[i], below).pressurePa();
      double misfit = Math.abs(law - pressure[layout.upstream(i, flow[i])]);
      if (!(misfit <= worstEnergy)) {
        worstEnergy = misfit;
        worstRun = i;
      }
    }
    double worstMass = 0;
    for (int j = 0; j < left.length; j++) {
      worstMass = layout.isHeld(j) ? worstMass : Math.max(worstMass, Math.abs(left[j]));
    }
    String worst = flow.length == 0 ? "" : layout.runs().get(worstRun).run();
    return new Solved.Audit(worstMass, Math.max(in, out), worstEnergy, worst, rounds);
  }
}
