package tankyard.engine.network;

/** Flows and pressures of a network, with the audit of both. */
public final class Solved {
  private final Layout layout;
  private final double[] flow;
  private final double[] pressurePa;
  private final Audit audit;

  /** Takes the arrays over: nobody may write into them afterwards. */
  Solved(Layout layout, double[] flow, double[] pressurePa, Audit audit) {
    this.layout = layout;
    this.flow = flow;
    this.pressurePa = pressurePa;
    this.audit = audit;
  }

  public Layout layout() {
    return layout;
  }

  /** m3/s through a run, positive from its start to its end. */
  public double flow(int run) {
    return flow[run];
  }

  public double flow(String runId) {
    return flow[layout.run(runId)];
  }

  public double[] flows() {
    return flow.clone();
  }

  /** Gauge, at a joint. */
  public double pressurePa(int joint) {
    return pressurePa[joint];
  }

  public double pressurePa(String jointId) {
    return pressurePa[layout.joint(jointId)];
  }

  public double[] pressuresPa() {
    return pressurePa.clone();
  }

  /** What is left over when mass and energy are added up again. */
  public Audit audit() {
    return audit;
  }

  /**
   * What does not add up.
   *
   * @param worstMass m3/s left over at the worst joint
   * @param throughput m3/s that goes through the whole network
   * @param worstEnergyPa at the worst run
   * @param worstRun its id; empty where there is none
   * @param rounds of Newton's method, each with a factorization; zero for a tree, which is swept
   * @param steps beside those, with the factor of the round before
   */
  public record Audit(
      double worstMass,
      double throughput,
      double worstEnergyPa,
      String worstRun,
      int rounds,
      int steps) {
    /** The limits the solver promises (see docs/calculation-basis.md). */
    public boolean holds() {
      return worstMass <= 1e-8 * Math.max(throughput, 1e-9) && worstEnergyPa <= 0.01;
    }
  }
}
