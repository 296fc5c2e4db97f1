package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Ten thousand random trees and loops of real pipes: each balances in mass and energy, or what is
 * wrong with it is said by name; and the same again gives the same bits.
 */
class NetworkPropertyTest {
  private static final int NETWORKS = 10_000;

  @Test
  void everyNetworkBalancesOrIsDiagnosedByName() {
    RandomNetworks networks = new RandomNetworks(new Random(20261125));
    for (int n = 0; n < NETWORKS; n++) {
      RandomNetworks.Drawn drawn = networks.next();
      Optional<Solved> solved = solveOrDiagnose(drawn);
      solved.ifPresent(s -> Balance.require(drawn.toString(), drawn.network(), s));
      networks.count(drawn, solved);
    }
    System.out.println(networks.mix());
    assertThat(networks.mix().solvedLoops()).isGreaterThan(NETWORKS / 3);
    assertThat(networks.mix().solvedTrees()).isGreaterThan(NETWORKS / 3);
    assertThat(networks.mix().givenUp()).as("loops given up, by name").isLessThan(NETWORKS / 500);
  }

  private static Optional<Solved> solveOrDiagnose(RandomNetworks.Drawn drawn) {
    try {
      Solved solved = NetworkSolver.solve(drawn.network());
      assertThat(drawn.network().cutOff()).as("%s", drawn).isEmpty();
      return Optional.of(solved);
    } catch (Unsolved e) {
      List<String> lost = drawn.network().cutOff();
      if (lost.isEmpty()) {
        assertThat(e)
            .as("%s", drawn)
            .hasMessageMatching(".*(over the crests|do not balance).*\\bL\\d+.*");
      } else {
        assertThat(e.getMessage())
            .as("%s", drawn)
            .contains(lost.get(0))
            .containsPattern("shut are L");
      }
      return Optional.empty();
    }
  }

  @Test
  void theSameNetworkGivesTheSameBits() {
    for (int seed = 0; seed < 50; seed++) {
      RandomNetworks once = new RandomNetworks(new Random(seed));
      RandomNetworks again = new RandomNetworks(new Random(seed));
      for (int n = 0; n < 4; n++) {
        assertThat(outcome(again.next())).isEqualTo(outcome(once.next()));
      }
    }
  }

  /** All its numbers, or what was said. */
  private static String outcome(RandomNetworks.Drawn drawn) {
    try {
      Solved solved = NetworkSolver.solve(drawn.network());
      return Arrays.toString(solved.flows()) + Arrays.toString(solved.pressuresPa());
    } catch (Unsolved e) {
      return e.getMessage();
    }
  }

  @Test
  void twoEqualLinesShareTheFlow() {
    List<Joint> joints = List.of(Joint.held("S", 1e5), Joint.free("W", 1e-3));
    List<Run> runs =
        List.of(
            new Run("a", "W", "S", RandomNetworks.pipe(300, 0.05, 2)),
            new Run("b", "S", "W", RandomNetworks.pipe(300, 0.05, -2)));
    Solved solved = NetworkSolver.solve(Network.of(joints, runs));
    assertThat(solved.flow("a")).isCloseTo(5e-4, Offset.offset(1e-9));
    assertThat(solved.flow("b")).isCloseTo(-5e-4, Offset.offset(1e-9));
  }

  @Test
  void aJointWithNoWayOutIsNamed() {
    Network island = Network.of(List.of(Joint.held("S", 0), Joint.free("Well 7", 1e-4)), List.of());
    assertThat(island.cutOff()).containsExactly("Well 7");
    assertThatThrownBy(() -> NetworkSolver.solve(island))
        .isInstanceOf(Unsolved.class)
        .hasMessage("No way to a held pressure from Well 7");
    assertThat(NetworkSolver.solve(island.reachable()).layout().joints()).containsExactly("S");
  }

  @Test
  void aWayThatIsShutIsNamed() {
    Network shut =
        Network.of(
            List.of(Joint.held("S", 0), Joint.free("Tee 4", 0), Joint.free("Well 7", 1e-4)),
            List.of(
                new Run("FL7", "Well 7", "Tee 4", RandomNetworks.pipe(100, 0.05, 0)),
                new Run("TR4", "Tee 4", "S", Shut.VALVE)));
    assertThatThrownBy(() -> NetworkSolver.solve(shut))
        .isInstanceOf(Unsolved.class)
        .hasMessage("No way to a held pressure from Tee 4, Well 7: shut are TR4");
  }

  @Test
  void aNetworkWithoutAnOutletSaysSo() {
    Network none = Network.of(List.of(Joint.free("Well 7", 1e-4)), List.of());
    assertThatThrownBy(() -> NetworkSolver.solve(none))
        .isInstanceOf(Unsolved.class)
        .hasMessage("No outlet: no joint's pressure is held");
  }
}
