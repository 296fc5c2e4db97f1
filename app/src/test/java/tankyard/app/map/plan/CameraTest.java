package tankyard.app.map.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CameraTest {
  private final Camera camera = new Camera(new MapSpot(100, 50), 2, 800, 600);

  @Test
  void north_is_up_and_east_is_right() {
    assertThat(camera.x(100)).isEqualTo(400);
    assertThat(camera.x(110)).isEqualTo(420);
    assertThat(camera.y(50)).isEqualTo(300);
    assertThat(camera.y(60)).isEqualTo(280);
  }

  @Test
  void the_spot_under_a_pixel_is_drawn_at_that_pixel() {
    MapSpot spot = camera.spot(123, 456);
    assertThat(camera.x(spot)).isCloseTo(123, within(1e-9));
    assertThat(camera.y(spot)).isCloseTo(456, within(1e-9));
  }

  @Test
  void zooming_holds_the_spot_under_the_pointer() {
    MapSpot held = camera.spot(700, 100);
    Camera zoomed = camera.zoomedAt(700, 100, 3.7);
    assertThat(zoomed.pxPerM()).isCloseTo(7.4, within(1e-12));
    assertThat(zoomed.x(held)).isCloseTo(700, within(1e-9));
    assertThat(zoomed.y(held)).isCloseTo(100, within(1e-9));
  }

  @Test
  void zooming_stops_at_the_ends_and_does_not_slide() {
    Camera far = camera.zoomedAt(700, 100, 1e-9);
    assertThat(far.zoomedAt(700, 100, 0.5).pxPerM()).isEqualTo(far.pxPerM());
    assertThat(far.zoomedAt(700, 100, 0.5).centre().metresTo(far.centre())).isLessThan(1e-6);
  }

  @Test
  void panning_moves_the_map_with_the_hand() {
    MapSpot spot = camera.spot(200, 200);
    Camera panned = camera.panned(30, -40);
    assertThat(panned.x(spot)).isCloseTo(230, within(1e-9));
    assertThat(panned.y(spot)).isCloseTo(160, within(1e-9));
  }

  @Test
  void a_fitted_box_lies_within_the_margins() {
    MapBox box = new MapBox(0, 0, 1000, 200);
    Camera fitted = camera.fitted(box, 50);
    assertThat(fitted.x(0)).isCloseTo(50, within(1e-9));
    assertThat(fitted.x(1000)).isCloseTo(750, within(1e-9));
    assertThat(fitted.y(200)).isGreaterThan(50);
  }
}
