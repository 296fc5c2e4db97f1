package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.pipes.MarchResult;
import tankyard.engine.pipes.MinorLosses;
import tankyard.engine.pipes.PipePath;
import tankyard.engine.pipes.PipeRun;

/** Random trees and loops of real pipes: mass and energy must balance, and the same again. */
class NetworkPropertyTest {
  private static final int NETWORKS = 400;

  @Test
  void massAndEnergyBalanceOnRandomTreesAndLoops() {
    Random random = new Random(20261125);
    int withLoops = 0;
    int stillLines = 0;
    for (int n = 0; n < NETWORKS; n++) {
      Network network = network(random, n % 2 == 1);
      Solved solved = NetworkSolver.solve(network);
      assertThat(solved.audit().holds()).as("network %d: %s", n, solved.audit()).isTrue();
      withLoops += network.runs().size() >= network.joints().size() ? 1 : 0;
      stillLines += (int) Arrays.stream(solved.flows()).filter(q -> Math.abs(q) < 1e-12).count();
    }
    System.out.println(
        NETWORKS + " networks, " + withLoops + " with loops, " + stillLines + " lines at rest");
    assertThat(withLoops).isGreaterThan(NETWORKS / 3);
    assertThat(stillLines).isPositive();
  }

  @Test
  void theSameNetworkGivesTheSameBits() {
    Solved once = NetworkSolver.solve(network(new Random(3), true));
    Solved again = NetworkSolver.solve(network(new Random(3), true));
    assertThat(again.flows()).isEqualTo(once.flows());
    assertThat(again.pressuresPa()).isEqualTo(once.pressuresPa());
  }

  @Test
  void twoEqualLinesShareTheFlow() {
    List<Joint> joints = List.of(Joint.held("S", 1e5), Joint.free("W", 1e-3));
    List<Run> runs =
        List.of(
            new Run("a", "W", "S", pipe(300, 0.05, 2)),
            new Run("b", "S", "W", pipe(300, 0.05, -2)));
    Solved solved = NetworkSolver.solve(new Network(joints, runs));
    assertThat(solved.flow("a")).isCloseTo(5e-4, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(solved.flow("b")).isCloseTo(-5e-4, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void aJointWithNoWayOutIsNamed() {
    Network island =
        new Network(List.of(Joint.held("S", 0), Joint.free("Well 7", 1e-4)), List.of());
    assertThat(island.cutOff()).containsExactly("Well 7");
    assertThatThrownBy(() -> NetworkSolver.solve(island))
        .isInstanceOf(Unsolved.class)
        .hasMessageContaining("Well 7");
    assertThat(NetworkSolver.solve(island.reachable()).layout().joints()).containsExactly("S");
  }

  private static Network network(Random random, boolean loops) {
    int size = 1 + random.nextInt(30);
    List<Joint> joints = new ArrayList<>();
    joints.add(Joint.held("S", random.nextDouble() * 3e5));
    List<Run> runs = new ArrayList<>();
    for (int i = 1; i <= size; i++) {
      double inflow = random.nextInt(4) == 0 ? 0 : Math.pow(10, -6 + 3 * random.nextDouble());
      joints.add(Joint.free("J" + i, inflow));
      int inner = random.nextInt(i);
      runs.add(run("L" + i, "J" + i, inner == 0 ? "S" : "J" + inner, random));
    }
    for (int i = 0; loops && i < 1 + size / 8; i++) {
      int a = 1 + random.nextInt(size);
      int b = random.nextInt(a);
      runs.add(run("X" + i, "J" + a, b == 0 ? "S" : "J" + b, random));
    }
    return new Network(joints, runs);
  }

  private static Run run(String id, String from, String to, Random random) {
    boolean turned = random.nextBoolean();
    double length = Math.pow(10, 3 * random.nextDouble());
    double bore = 0.03 + 0.12 * random.nextDouble();
    // Flat: in a loop the rises must add up to nothing, and they do at zero.
    return new Run(id, turned ? to : from, turned ? from : to, pipe(length, bore, 0));
  }

  private static Link pipe(double length, double bore, double rise) {
    LineLaw law =
        LineLaw.of(
            new PipeRun(bore, 4.6e-5, PipePath.straight(length, rise), MinorLosses.ofK(1.5)));
    Liquid liquid = new Liquid(1040, 1.1e-3);
    return (flow, downstream) -> {
      MarchResult march = law.march(flow, liquid, downstream);
      return new Link.Upstream(
          march.upstreamPascals(), march.upstreamPerFlow(), march.upstreamPerDownstream());
    };
  }
}
