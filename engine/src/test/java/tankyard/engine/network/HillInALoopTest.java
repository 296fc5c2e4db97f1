package tankyard.engine.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two ways from a well to the separator, one of them over a hill. */
class HillInALoopTest {
  private static final double WELL = 2e-4;
  private static final double HELD_PA = 5e4;

  /** Of water, 10 kPa for each metre; by the square of the flow. */
  private record OverHill(double crestPa, double resistance) implements Link {
    @Override
    public Upstream upstream(double flow, double downstreamPa) {
      double size = Math.abs(flow);
      double loss = resistance * size * size;
      return downstreamPa + loss > crestPa + loss / 2
          ? new Upstream(downstreamPa + loss, 2 * resistance * size, 1)
          : new Upstream(crestPa + loss / 2, resistance * size, 0);
    }
  }

  private static Solved solved(double crestPa, double flatResistance) {
    return NetworkSolver.solve(
        Network.of(
            List.of(Joint.held("S", HELD_PA), Joint.free("W", WELL)),
            List.of(
                new Run("flat", "W", "S", new OverHill(-1e9, flatResistance)),
                new Run("hill", "S", "W", new OverHill(crestPa, 1e10)))));
  }

  @Test
  void aHillTooHighLeavesAllToTheOtherLine() {
    Solved solved = solved(2e5, 1e12);
    double wellPa = HELD_PA + 1e12 * WELL * WELL;
    assertThat(solved.pressurePa("W")).isCloseTo(wellPa, within(20.0));
    assertThat(solved.flow("flat")).isCloseTo(WELL, within(1e-8));
    // A litre a day for each bar across the crest.
    assertThat(-solved.flow("hill"))
        .isCloseTo((wellPa - HELD_PA) / 1e5 / 1000 / 86400, within(1e-11));
    assertThat(solved.audit().holds()).isTrue();
  }

  @Test
  void aHillThatThePressureClearsTakesItsShare() {
    // 1.5 bar of hill; the flat line alone would need 4.5 bar.
    Solved solved = solved(1.5e5, 1e13);
    double flat = solved.flow("flat");
    double hill = -solved.flow("hill");
    assertThat(flat + hill).isCloseTo(WELL, within(1e-15));
    assertThat(1.5e5 + 0.5e10 * hill * hill).isCloseTo(HELD_PA + 1e13 * flat * flat, within(0.01));
    assertThat(solved.audit().holds()).isTrue();
  }

  @Test
  void aStillJointBehindAHillIsNoFault() {
    Network still =
        Network.of(
            List.of(Joint.held("S", HELD_PA), Joint.free("A", 0), Joint.free("B", 0)),
            List.of(
                new Run("out", "S", "A", new OverHill(2e5, 1e10)),
                new Run("in", "B", "A", new OverHill(-1e9, 1e10))));
    Solved solved = NetworkSolver.solve(still);
    assertThat(solved.pressurePa("A")).isEqualTo(2e5);
    assertThat(solved.pressurePa("B")).isEqualTo(2e5);
    assertThat(solved.audit().holds()).isTrue();
  }
}
