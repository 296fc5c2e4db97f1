package tankyard.engine.network;

import java.util.Map;

/**
 * Flows and pressures of a network, with the audit of both.
 *
 * @param flow m3/s through each run, positive from its start to its end
 * @param pressurePa gauge, at each joint
 * @param audit what is left over when mass and energy are added up again
 */
public record Solved(Map<String, Double> flow, Map<String, Double> pressurePa, Audit audit) {
  public Solved {
    flow = Map.copyOf(flow);
    pressurePa = Map.copyOf(pressurePa);
  }

  /**
   * What does not add up.
   *
   * @param worstMass m3/s left over at the worst joint
   * @param throughput m3/s that goes through the whole network
   * @param worstEnergyPa at the worst run
   * @param rounds of Newton's method; zero for a tree, which is swept
   */
  public record Audit(double worstMass, double throughput, double worstEnergyPa, int rounds) {
    /** The limits the solver promises (see docs/calculation-basis.md). */
    public boolean holds() {
      return worstMass <= 1e-8 * Math.max(throughput, 1e-9) && worstEnergyPa <= 0.01;
    }
  }
}
