package tankyard.engine.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Newton's method on the whole network: the unknowns are the flow of every run and the pressure of
 * every free joint, the equations are energy along every run and mass at every free joint (the
 * global gradient form of Todini and Pilati 1988, here as one dense system since a battery has tens
 * of joints).
 */
final class LoopNewton {
  private static final int MOST_ROUNDS = 200;
  private static final int MOST_HALVINGS = 12;
  private static final double CLOSE_PA = 1e-4;

  /** A run that loses nothing would leave its flow undetermined, Pa/(m3/s). */
  private static final double LEAST_SLOPE = 1e-3;

  private final Network network;
  private final List<Run> runs;
  private final List<Joint> free;
  private final Map<String, Integer> row = new HashMap<>();
  private double[] flow;
  private double[] pressure;

  LoopNewton(Network network, Map<String, Double> startFlow, Map<String, Double> startPressure) {
    this.network = network;
    this.runs = network.runs();
    this.free = network.joints().stream().filter(j -> !j.isHeld()).toList();
    for (int i = 0; i < free.size(); i++) {
      row.put(free.get(i).id(), i);
    }
    flow = runs.stream().mapToDouble(r -> startFlow.get(r.id())).toArray();
    pressure = free.stream().mapToDouble(j -> startPressure.get(j.id())).toArray();
  }

  Solved solve() {
    Solved.Audit audit = null;
    for (int round = 1; round <= MOST_ROUNDS; round++) {
      step();
      audit = Auditor.audit(network, flows(), pressures(), round);
      if (audit.holds() && audit.worstEnergyPa() <= CLOSE_PA) {
        break;
      }
    }
    if (!audit.holds()) {
      throw new Unsolved(
          "The loops do not balance: "
              + audit.worstEnergyPa()
              + " Pa are left along the worst line");
    }
    return new Solved(flows(), pressures(), audit);
  }

  private void step() {
    int m = runs.size();
    RealMatrix matrix = new Array2DRowRealMatrix(m + free.size(), m + free.size());
    RealVector right = new ArrayRealVector(m + free.size());
    for (int i = 0; i < m; i++) {
      energyRow(i, matrix, right);
      massEntry(runs.get(i).from(), i, -1, matrix, right);
      massEntry(runs.get(i).to(), i, 1, matrix, right);
    }
    for (int j = 0; j < free.size(); j++) {
      right.addToEntry(m + j, -free.get(j).inflow());
    }
    move(solved(matrix, right));
  }

  private static RealVector solved(RealMatrix matrix, RealVector right) {
    try {
      return new LUDecomposition(matrix, 1e-300).getSolver().solve(right);
    } catch (SingularMatrixException e) {
      throw new Unsolved("The loops have no single answer: a crest cuts a line off from the rest");
    }
  }

  /** Takes the whole step, or a half, a quarter ... of it until the worst run gets better. */
  private void move(RealVector change) {
    double before = worstEnergy();
    double[] flow0 = flow;
    double[] pressure0 = pressure;
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
      take(flow0, pressure0, change, share);
      if (worstEnergy() <= before * (1 - 0.1 * share) || before < CLOSE_PA) {
        return;
      }
    }
    // No share of the step helps, as happens where a flow turns round: take it whole.
    take(flow0, pressure0, change, 1);
  }

  private void take(double[] flow0, double[] pressure0, RealVector change, double share) {
    flow = flow0.clone();
    pressure = pressure0.clone();
    for (int i = 0; i < flow.length; i++) {
      flow[i] += share * change.getEntry(i);
    }
    for (int j = 0; j < pressure.length; j++) {
      pressure[j] += share * change.getEntry(flow.length + j);
    }
  }

  /** Upstream pressure less what the law asks for, for a small change of flow and pressures. */
  private void energyRow(int i, RealMatrix matrix, RealVector right) {
    Run run = runs.get(i);
    String up = run.upstream(flow[i]);
    String down = run.downstream(flow[i]);
    Link.Upstream law = run.link().upstream(flow[i], pressureAt(down));
    double slope = Math.max(law.perFlow(), LEAST_SLOPE);
    matrix.setEntry(i, i, flow[i] >= 0 ? -slope : slope);
    pressureEntry(i, up, 1, matrix);
    pressureEntry(i, down, -law.perDownstream(), matrix);
    right.setEntry(i, law.pressurePa() - pressureAt(up));
  }

  private void pressureEntry(int i, String joint, double value, RealMatrix matrix) {
    Integer column = row.get(joint);
    if (column != null) {
      matrix.addToEntry(i, runs.size() + column, value);
    }
  }

  private void massEntry(String joint, int i, double sign, RealMatrix matrix, RealVector right) {
    Integer at = row.get(joint);
    if (at != null) {
      matrix.addToEntry(runs.size() + at, i, sign);
      right.addToEntry(runs.size() + at, -sign * flow[i]);
    }
  }

  private double pressureAt(String joint) {
    Integer at = row.get(joint);
    return at == null ? network.joint(joint).heldPa().getAsDouble() : pressure[at];
  }

  private double worstEnergy() {
    double worst = 0;
    for (int i = 0; i < runs.size(); i++) {
      Run run = runs.get(i);
      double law = run.link().upstream(flow[i], pressureAt(run.downstream(flow[i]))).pressurePa();
      worst = Math.max(worst, Math.abs(law - pressureAt(run.upstream(flow[i]))));
    }
    return worst;
  }

  private Map<String, Double> flows() {
    Map<String, Double> flows = new HashMap<>();
    for (int i = 0; i < runs.size(); i++) {
      flows.put(runs.get(i).id(), flow[i]);
    }
    return flows;
  }

  private Map<String, Double> pressures() {
    Map<String, Double> pressures = new HashMap<>();
    for (Joint joint : network.joints()) {
      pressures.put(joint.id(), pressureAt(joint.id()));
    }
    return pressures;
  }
}
