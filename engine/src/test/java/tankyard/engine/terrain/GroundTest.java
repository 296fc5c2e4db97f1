package tankyard.engine.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GroundTest {
  private static final double EXACT = 1e-9;

  @Test
  void aPlaneIsReadBackEverywhereInside() {
    Random random = new Random(7);
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double east = random.nextDouble() * 1000;
      double north = random.nextDouble() * 800;
      spots.add(new Spot(east, north, plane(east, north)));
    }
    for (double[] c : new double[][] {{0, 0}, {1000, 0}, {0, 800}, {1000, 800}}) {
      spots.add(new Spot(c[0], c[1], plane(c[0], c[1])));
    }
    Ground ground = Ground.of(spots);
    for (int i = 0; i < 200; i++) {
      double east = random.nextDouble() * 1000;
      double north = random.nextDouble() * 800;
      assertThat(ground.heightAt(east, north).orElseThrow())
          .isCloseTo(plane(east, north), within(1e-6));
    }
  }

  @Test
  void heightsInARowRunStraightFromOneToTheNext() {
    Ground ground =
        Ground.of(List.of(new Spot(0, 0, 100), new Spot(50, 0, 110), new Spot(90, 0, 90)));
    assertThat(ground.heightAt(25, 0).orElseThrow()).isCloseTo(105, within(EXACT));
    assertThat(ground.heightAt(70, 0).orElseThrow()).isCloseTo(100, within(EXACT));
    assertThat(ground.heightAt(200, 30).orElseThrow()).isCloseTo(90, within(EXACT));
  }

  @Test
  void aRouteStopsAtEachKnownHeightOnIt() {
    Ground ground =
        Ground.of(
            List.of(
                new Spot(0, 0, 274),
                new Spot(122, 0, 278),
                new Spot(305, 0, 284),
                new Spot(549, 0, 268),
                new Spot(100, -400, 270)));
    List<Station> along = ground.along(List.of(new RouteSpot(0, 0), new RouteSpot(549, 0)));
    assertThat(along).extracting(Station::distanceM).containsExactly(0.0, 122.0, 305.0, 549.0);
    assertThat(along).extracting(Station::groundM).containsExactly(274.0, 278.0, 284.0, 268.0);
  }

  @Test
  void aRidgeBesideTheRouteIsCrossedAtItsEdge() {
    Ground ground =
        Ground.of(
            List.of(
                new Spot(0, -100, 0),
                new Spot(0, 100, 0),
                new Spot(100, -100, 20),
                new Spot(100, 100, 20),
                new Spot(200, -100, 0),
                new Spot(200, 100, 0)));
    List<Station> along = ground.along(List.of(new RouteSpot(0, 10), new RouteSpot(200, 10)));
    double highest = along.stream().mapToDouble(Station::groundM).max().orElseThrow();
    assertThat(highest).isCloseTo(20, within(EXACT));
    assertThat(along.get(along.size() - 1).distanceM()).isCloseTo(200, within(EXACT));
  }

  @Test
  void noHeightAtAllGivesNoGround() {
    Ground nothing = Ground.of(List.of());
    assertThat(nothing.heightAt(0, 0)).isEmpty();
    assertThat(nothing.along(List.of(new RouteSpot(0, 0), new RouteSpot(1, 1)))).isEmpty();
  }

  @Test
  void oneHeightHoldsEverywhere() {
    assertThat(Ground.of(List.of(new Spot(5, 5, 300))).heightAt(-900, 40).orElseThrow())
        .isEqualTo(300);
  }

  private static double plane(double east, double north) {
    return 250 + 0.02 * east - 0.01 * north;
  }
}
