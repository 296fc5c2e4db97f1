package tankyard.engine.network;

import java.util.HashMap;
import java.util.Map;

/** Adds up mass at every joint and energy along every run again, after a solve. */
final class Auditor {
  private Auditor() {}

  static Solved.Audit audit(
      Network network, Map<String, Double> flow, Map<String, Double> pressure, int rounds) {
    Map<String, Double> left = new HashMap<>();
    double in = 0;
    double out = 0;
    for (Joint joint : network.joints()) {
      left.put(joint.id(), joint.inflow());
      in += Math.max(0, joint.inflow());
      out += Math.max(0, -joint.inflow());
    }
    double worstEnergy = 0;
    for (Run run : network.runs()) {
      double q = flow.get(run.id());
      left.merge(run.from(), -q, Double::sum);
      left.merge(run.to(), q, Double::sum);
      double law = run.link().upstream(q, pressure.get(run.downstream(q))).pressurePa();
      worstEnergy = Math.max(worstEnergy, Math.abs(law - pressure.get(run.upstream(q))));
    }
    double worstMass =
        network.joints().stream()
            .filter(j -> !j.isHeld())
            .mapToDouble(j -> Math.abs(left.get(j.id())))
            .max()
            .orElse(0);
    return new Solved.Audit(worstMass, Math.max(in, out), worstEnergy, rounds);
  }
}
