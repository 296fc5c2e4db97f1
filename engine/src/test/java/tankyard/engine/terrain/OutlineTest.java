package tankyard.engine.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Shapes whose measures are plain to see. */
class OutlineTest {
  private static final Outline FIELD =
      Outline.of(new double[] {0, 30, 30, 0}, new double[] {0, 0, 40, 40}, true);
  private static final Outline WAY =
      Outline.of(new double[] {0, 30, 30}, new double[] {0, 0, 40}, false);
  private static final Outline SPOT = Outline.of(new double[] {3}, new double[] {4}, false);

  @Test
  void aFieldHasGroundInsideAndAWayHasNone() {
    assertThat(FIELD.areaM2()).isEqualTo(1200);
    assertThat(FIELD.lengthM()).isEqualTo(140);
    assertThat(WAY.areaM2()).isZero();
    assertThat(WAY.lengthM()).isEqualTo(70);
  }

  @Test
  void onASideIsInside() {
    assertThat(FIELD.holds(30, 20)).isTrue();
    assertThat(FIELD.holds(15, 20)).isTrue();
    assertThat(FIELD.holds(30.01, 20)).isFalse();
    assertThat(WAY.holds(15, 20)).isFalse();
  }

  @Test
  void theNearestSideCountsAndInsideIsNoDistance() {
    assertThat(FIELD.metresTo(15, 20)).isZero();
    assertThat(FIELD.metresTo(33, 44)).isEqualTo(5);
    assertThat(WAY.metresTo(15, 20)).isEqualTo(15);
    assertThat(SPOT.metresTo(0, 0)).isEqualTo(5);
  }

  /** A square of sides and a circle of corners: A + P r + pi r2, less the chords of the circle. */
  @Test
  void whatLiesWithinADistanceRoundsItsCorners() {
    double area = area(FIELD.within(10).get(0));
    assertThat(area).isCloseTo(1200 + 1400 + Math.PI * 100, within(2.0));
    assertThat(area).isLessThan(1200 + 1400 + Math.PI * 100);
  }

  @Test
  void sidesThatCrossAreKnown() {
    assertThat(FIELD.crossesItself()).isFalse();
    assertThat(
            Outline.of(new double[] {0, 30, 0, 30}, new double[] {0, 40, 40, 0}, true)
                .crossesItself())
        .isTrue();
    assertThat(WAY.crossesItself()).isFalse();
  }

  /** A way round a field of 100 by 100 leaves a square of 80 by 80 in the middle of it free. */
  @Test
  void aWayThatRunsRoundSomethingHasARingInsideToo() {
    Outline round =
        Outline.of(new double[] {0, 100, 100, 0, 0}, new double[] {0, 0, 100, 100, 0}, false);
    assertThat(round.within(10)).hasSize(2);
    assertThat(area(round.within(10).get(1))).isCloseTo(6400, within(1e-6));
    assertThat(round.within(60)).hasSize(1);
  }

  /**
   * Two triangles that meet in the middle, each of 30 by 20 and 80 round: both have ground, and
   * both are kept away from, less what the two strips share at the crossing.
   */
  @Test
  void groundThatSidesCrossRoundIsStillKeptAwayFrom() {
    Outline crossed = Outline.of(new double[] {0, 30, 0, 30}, new double[] {0, 40, 40, 0}, true);
    assertThat(crossed.areaM2()).isCloseTo(600, within(1e-6));
    assertThat(crossed.metresTo(15, 5)).isZero();
    assertThat(crossed.metresTo(15, 35)).isZero();
    assertThat(crossed.metresTo(0, 20)).isCloseTo(12, within(1e-9));
    assertThat(area(crossed.within(1).get(0))).isBetween(760 - 1.5, 760 + 2 * Math.PI);
  }

  /** Three corners on one straight line close round nothing, and yet stand somewhere. */
  @Test
  void aFieldWithoutGroundIsKeptAwayFromByItsSides() {
    Outline flat = Outline.of(new double[] {0, 10, 20}, new double[] {0, 0, 0}, true);
    assertThat(flat.areaM2()).isZero();
    assertThat(flat.metresTo(10, 5)).isEqualTo(5);
    assertThat(area(flat.within(2).get(0))).isCloseTo(80 + Math.PI * 4, within(0.1));
  }

  private static double area(java.util.List<double[]> ring) {
    double twice = 0;
    for (int i = 0; i + 1 < ring.size(); i++) {
      twice += ring.get(i)[0] * ring.get(i + 1)[1] - ring.get(i + 1)[0] * ring.get(i)[1];
    }
    return Math.abs(twice) / 2;
  }
}
