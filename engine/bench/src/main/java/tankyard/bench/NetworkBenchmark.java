package tankyard.bench;

import edu.emory.mathcs.csparsej.tdouble.Dcs_chol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcs;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcsn;
import edu.emory.mathcs.csparsej.tdouble.Dcs_common.Dcss;
import edu.emory.mathcs.csparsej.tdouble.Dcs_compress;
import edu.emory.mathcs.csparsej.tdouble.Dcs_dupl;
import edu.emory.mathcs.csparsej.tdouble.Dcs_entry;
import edu.emory.mathcs.csparsej.tdouble.Dcs_schol;
import edu.emory.mathcs.csparsej.tdouble.Dcs_util;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tankyard.engine.network.Network;
import tankyard.engine.network.NetworkSolver;
import tankyard.engine.network.Run;
import tankyard.engine.network.Solved;

/**
 * The network solver on large networks, beside the bare factorization of the matrix of all their
 * free joints, with its order known already, and the making of that order. The stack is for the
 * order of a chain; the collector is the one that is in the way least where every solve leaves
 * large rows of numbers behind.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(
    value = 1,
    jvmArgsAppend = {"-Xss64m", "-XX:+UseParallelGC"})
public class NetworkBenchmark {
  private static final int NATURAL = 0;
  private static final int MINIMUM_DEGREE = 1;

  @Param({"GATHERING", "GRID"})
  public NetworkShape shape;

  @Param({"1000", "10000", "100000"})
  public int runs;

  private Network network;
  private Dcs matrix;
  private Dcss order;

  @Setup(Level.Trial)
  public void build() {
    network = shape.build(runs, new Random(20261125));
    matrix = matrix(network);
    order = Dcs_schol.cs_schol(MINIMUM_DEGREE, matrix);
    Solved solved = NetworkSolver.solve(network);
    System.out.printf(
        "%n%s, %d runs: %d rounds, %d steps beside them, entries of the factor %,d by minimum degree, %,d by joint number%n",
        shape,
        network.runs().size(),
        solved.audit().rounds(),
        solved.audit().steps(),
        order.lnz,
        Dcs_schol.cs_schol(NATURAL, matrix).lnz);
  }

  /** The whole solve: tree, rounds of Newton, balance and audit. */
  @Benchmark
  public Solved solve() {
    return NetworkSolver.solve(network);
  }

  /** One factorization, as each round needs one. */
  @Benchmark
  public Dcsn factorize() {
    return Dcs_chol.cs_chol(matrix, order);
  }

  /** The order and what it lets one foresee: once for a pattern, not in a round's factorization. */
  @Benchmark
  public Dcss order() {
    return Dcs_schol.cs_schol(MINIMUM_DEGREE, matrix);
  }

  private static Dcs matrix(Network network) {
    int n = network.joints().size() - 1;
    Dcs triplets = Dcs_util.cs_spalloc(n, n, 4 * network.runs().size(), true, true);
    for (Run run : network.runs()) {
      int a = Integer.parseInt(run.from()) - 1;
      int b = Integer.parseInt(run.to()) - 1;
      entry(triplets, a, a, 1);
      entry(triplets, b, b, 1);
      entry(triplets, a, b, -1);
      entry(triplets, b, a, -1);
    }
    Dcs packed = Dcs_compress.cs_compress(triplets);
    Dcs_dupl.cs_dupl(packed);
    return packed;
  }

  private static void entry(Dcs triplets, int row, int column, double value) {
    if (row >= 0 && column >= 0) {
      Dcs_entry.cs_entry(triplets, row, column, value);
    }
  }
}
