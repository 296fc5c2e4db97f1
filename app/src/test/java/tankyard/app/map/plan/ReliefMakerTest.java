package tankyard.app.map.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.terrain.Ground;
import tankyard.engine.terrain.Spot;
import tankyard.engine.units.Unit;

class ReliefMakerTest {
  /** A plane that rises 1 m in 10 to the east: its contours run north. */
  private static final List<Spot> PLANE =
      List.of(new Spot(0, 0, 0), new Spot(100, 0, 10), new Spot(0, 100, 0), new Spot(100, 100, 10));

  private final Relief relief = ReliefMaker.of(Ground.of(PLANE).facets(), Unit.ELEVATION_METRE);

  @Test
  void contours_of_a_plane_lie_where_its_height_is() {
    assertThat(relief.contours()).isNotEmpty();
    for (ContourLine contour : relief.contours()) {
      double height = Double.parseDouble(contour.words().replace(" m", ""));
      for (MapSpot spot : contour.spots()) {
        assertThat(spot.eastM() / 10).isCloseTo(height, within(1e-9));
      }
    }
  }

  @Test
  void pieces_of_one_contour_are_joined_across_triangles() {
    assertThat(relief.contours().stream().map(ContourLine::words)).doesNotHaveDuplicates();
    for (ContourLine contour : relief.contours()) {
      double length =
          contour.spots().get(0).metresTo(contour.spots().get(contour.spots().size() - 1));
      assertThat(length).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void terraces_shrink_as_they_rise() {
    double last = Double.MAX_VALUE;
    for (Relief.Terrace terrace : relief.terraces()) {
      double area = terrace.faces().stream().mapToDouble(ReliefMakerTest::area).sum();
      assertThat(area).isLessThanOrEqualTo(last);
      assertThat(area).isCloseTo(10_000 * (1 - terrace.share()), within(1e-6));
      last = area;
    }
  }

  private static double area(List<MapSpot> face) {
    double twice = 0;
    for (int i = 0; i < face.size(); i++) {
      MapSpot a = face.get(i);
      MapSpot b = face.get((i + 1) % face.size());
      twice += a.eastM() * b.northM() - b.eastM() * a.northM();
    }
    return Math.abs(twice) / 2;
  }

  @Test
  void flat_ground_has_no_contours() {
    Ground flat = Ground.of(List.of(new Spot(0, 0, 5), new Spot(10, 0, 5), new Spot(0, 10, 5)));
    assertThat(ReliefMaker.of(flat.facets(), Unit.ELEVATION_METRE).contours()).isEmpty();
  }
}
