package tankyard.app.map.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelPlacerTest {
  private static final SymbolSize SYMBOL = new SymbolSize(16, 16, false);

  @Test
  void no_two_labels_cover_each_other_however_crowded_it_is() {
    LabelPlacer placer = new LabelPlacer(1000, 1000);
    List<LabelPlacer.Box> placed = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double x = 100 + (i % 8) * 30;
      double y = 100 + (i / 8) * 22;
      placer.beside(x, y, SYMBOL, 70, 14, false).ifPresent(placed::add);
    }
    assertThat(placed).hasSizeGreaterThan(5).hasSizeLessThan(60);
    for (LabelPlacer.Box a : placed) {
      for (LabelPlacer.Box b : placed) {
        assertThat(a != b && a.covers(b)).isFalse();
      }
    }
  }

  @Test
  void a_label_that_must_be_shown_is_shown() {
    LabelPlacer placer = new LabelPlacer(1000, 1000);
    placer.keepFree(100, 100, 1000, 1000);
    assertThat(placer.beside(100, 100, SYMBOL, 50, 14, false)).isEmpty();
    assertThat(placer.beside(100, 100, SYMBOL, 50, 14, true)).isPresent();
  }

  @Test
  void a_label_prefers_the_side_without_a_line() {
    LabelPlacer placer = new LabelPlacer(1000, 1000);
    placer.preferOff(100, 100, 400, 100);
    LabelPlacer.Box box = placer.beside(100, 100, SYMBOL, 50, 14, false).orElseThrow();
    assertThat(box.x() + box.width()).isLessThanOrEqualTo(100);
  }

  @Test
  void a_label_stays_on_the_drawing() {
    LabelPlacer placer = new LabelPlacer(200, 200);
    LabelPlacer.Box box = placer.beside(190, 100, SYMBOL, 50, 14, false).orElseThrow();
    assertThat(box.x() + box.width()).isLessThanOrEqualTo(200);
  }

  @Test
  void a_stroke_touches_the_boxes_it_runs_through() {
    LabelPlacer.Box box = new LabelPlacer.Box(10, 10, 20, 10);
    assertThat(box.touches(0, 15, 40, 15)).isTrue();
    assertThat(box.touches(0, 0, 40, 30)).isTrue();
    assertThat(box.touches(0, 25, 40, 25)).isFalse();
    assertThat(box.touches(35, 0, 35, 40)).isFalse();
    assertThat(box.touches(12, 12, 14, 14)).isTrue();
  }
}
