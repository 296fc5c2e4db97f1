package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Grids of real pipes, so large that a factor serves for several steps: they balance as small
 * networks do, and the same again gives the same bits.
 */
class GridTest {
  private static final int GRIDS = 30;

  @Test
  void aGridThatGoesOnWithAFactorBalances() {
    int steps = 0;
    for (int seed = 0; seed < GRIDS; seed++) {
      Network grid = grid(new Random(seed));
      Solved solved = NetworkSolver.solve(grid);
      Balance.require("grid " + seed, grid, solved);
      steps += solved.audit().steps();
    }
    assertThat(steps).as("steps with a factor at hand").isGreaterThan(GRIDS);
  }

  @Test
  void theSameGridGivesTheSameBits() {
    Solved once = NetworkSolver.solve(grid(new Random(7)));
    Solved again = NetworkSolver.solve(grid(new Random(7)));
    assertThat(Arrays.equals(again.flows(), once.flows())).isTrue();
    assertThat(Arrays.equals(again.pressuresPa(), once.pressuresPa())).isTrue();
  }

  /** On hills, with one to three outlets; a third of its joints take something in. */
  private static Network grid(Random random) {
    int side = 45 + random.nextInt(16);
    int outlets = 1 + random.nextInt(3);
    List<Joint> joints = new ArrayList<>();
    double[] heightM = new double[side * side];
    for (int j = 0; j < heightM.length; j++) {
      heightM[j] = 3 * random.nextDouble();
      boolean still = random.nextInt(3) > 0;
      joints.add(
          j < outlets
              ? Joint.held("J" + j, 1e5)
              : Joint.free("J" + j, still ? 0 : 1e-5 * random.nextDouble()));
    }
    List<Run> runs = new ArrayList<>();
    for (int j = 0; j < heightM.length; j++) {
      if (j % side > 0) {
        runs.add(run(runs.size(), j, j - 1, heightM, random));
      }
      if (j >= side) {
        runs.add(run(runs.size(), j, j - side, heightM, random));
      }
    }
    return Network.of(joints, runs);
  }

  private static Run run(int id, int a, int b, double[] heightM, Random random) {
    double length = 20 + 200 * random.nextDouble();
    double bore = 0.03 + 0.12 * random.nextDouble();
    Link pipe = RandomNetworks.pipe(length, bore, heightM[b] - heightM[a]);
    return new Run("L" + id, "J" + a, "J" + b, pipe);
  }
}
