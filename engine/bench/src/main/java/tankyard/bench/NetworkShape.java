package tankyard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tankyard.engine.network.Joint;
import tankyard.engine.network.Link;
import tankyard.engine.network.Network;
import tankyard.engine.network.Run;

/** Networks of any size to time the solver on: seeded, so that every run meets the same ones. */
public enum NetworkShape {
  /**
   * A random tree as gathering lines make one, with a twentieth more runs that close loops between
   * neighbours.
   */
  GATHERING {
    @Override
    Network build(int runs, Random random) {
      int joints = runs * 20 / 21;
      List<Joint> all = joints(joints, random);
      List<Run> lines = new ArrayList<>();
      for (int j = 1; j <= joints; j++) {
        int half = (j - 1) / 2;
        int inner = half - random.nextInt(Math.min(3, half + 1));
        lines.add(sized(lines.size(), j, inner, joints, random));
      }
      while (lines.size() < runs) {
        int a = 6 + random.nextInt(joints - 5);
        lines.add(sized(lines.size(), a, a - 1 - random.nextInt(5), joints, random));
      }
      return Network.of(all, lines);
    }
  },
  /** A full square grid. */
  GRID {
    @Override
    Network build(int runs, Random random) {
      int side = (int) Math.round((1 + Math.sqrt(1 + 2.0 * runs)) / 2);
      List<Joint> all = joints(side * side - 1, random);
      List<Run> lines = new ArrayList<>();
      for (int row = 0; row < side; row++) {
        for (int column = 0; column < side; column++) {
          int here = row * side + column;
          if (column + 1 < side) {
            lines.add(run(lines.size(), here + 1, here, random));
          }
          if (row + 1 < side) {
            lines.add(run(lines.size(), here + side, here, random));
          }
        }
      }
      return Network.of(all, lines);
    }
  };

  abstract Network build(int runs, Random random);

  private static List<Joint> joints(int free, Random random) {
    List<Joint> all = new ArrayList<>();
    all.add(Joint.held("0", 1e5));
    for (int j = 1; j <= free; j++) {
      all.add(Joint.free(String.valueOf(j), 1e-6 * (1 + random.nextDouble())));
    }
    return all;
  }

  /** Larger pipe towards the outlet, as lines are laid: some ten psi over each at its flow. */
  private static Run sized(int id, int from, int to, int joints, Random random) {
    double flow = 1.5e-6 * joints / from;
    double resistance = 1e4 * (1 + 9 * random.nextDouble()) / (flow * flow);
    return new Run("L" + id, String.valueOf(from), String.valueOf(to), new Turbulent(resistance));
  }

  private static Run run(int id, int from, int to, Random random) {
    return new Run(
        "L" + id,
        String.valueOf(from),
        String.valueOf(to),
        new Turbulent(1e8 * (1 + 9 * random.nextDouble())));
  }

  /** A level run whose law costs nothing, so that the solver is timed and not the friction. */
  private record Turbulent(double resistance) implements Link {
    private static final double LAMINAR = 1e4;

    @Override
    public boolean isLevel() {
      return true;
    }

    @Override
    public Upstream upstream(double flow, double downstreamPa) {
      double size = Math.abs(flow);
      return new Upstream(
          downstreamPa + LAMINAR * size + resistance * size * size,
          LAMINAR + 2 * resistance * size,
          1);
    }
  }
}
