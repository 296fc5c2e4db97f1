package tankyard.app.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tankyard.app.chart.LabelLanes.Spot;

class LabelLanesTest {
  @Test
  void labelsWithRoomStandCentredInOneLane() {
    assertThat(LabelLanes.place(List.of(50.0, 150.0), List.of(40.0, 40.0), 0, 200, 4))
        .containsExactly(new Spot(30, 0), new Spot(130, 0));
  }

  @Test
  void aLabelThatWouldLieOverAnotherGoesToTheNextLane() {
    assertThat(LabelLanes.place(List.of(50.0, 60.0), List.of(40.0, 40.0), 0, 200, 4))
        .containsExactly(new Spot(30, 0), new Spot(40, 1));
  }

  @Test
  void aLabelAtTheEndStaysInside() {
    assertThat(LabelLanes.place(List.of(0.0, 200.0), List.of(40.0, 40.0), 0, 200, 4))
        .containsExactly(new Spot(0, 0), new Spot(160, 0));
  }

  @Test
  void noTwoLabelsOfALaneTouchWhateverTheMarks() {
    Random random = new Random(7);
    List<Double> marks = Stream.generate(() -> random.nextDouble() * 500).limit(40).toList();
    List<Double> widths = Stream.generate(() -> 20 + random.nextDouble() * 80).limit(40).toList();
    List<Spot> spots = LabelLanes.place(marks, widths, 0, 500, 4);
    for (int i = 0; i < 40; i++) {
      for (int j = i + 1; j < 40; j++) {
        Spot a = spots.get(i);
        Spot b = spots.get(j);
        boolean apart =
            a.lane() != b.lane()
                || a.left() + widths.get(i) + 4 <= b.left() + 1e-9
                || b.left() + widths.get(j) + 4 <= a.left() + 1e-9;
        assertThat(apart).as("labels " + i + " and " + j).isTrue();
      }
    }
  }
}
