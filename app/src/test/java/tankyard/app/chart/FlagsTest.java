package tankyard.app.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tankyard.app.chart.Flags.Flag;
import tankyard.app.chart.Flags.Side;
import tankyard.app.chart.Flags.Spot;

class FlagsTest {
  private final Flags flags = new Flags(0, 500, 4);

  @Test
  void aLabelHangsOnTheSideItPrefers() {
    assertThat(flags.place(List.of(new Flag(100, 40, Side.RIGHT), new Flag(400, 40, Side.LEFT))))
        .containsExactly(new Spot(104, 0), new Spot(356, 0));
  }

  @Test
  void aLabelThatWouldStickOutHangsOnTheOtherSide() {
    assertThat(flags.place(List.of(new Flag(480, 40, Side.RIGHT))))
        .containsExactly(new Spot(436, 0));
  }

  @Test
  void aLabelWiderThanEitherSideStaysInside() {
    assertThat(flags.place(List.of(new Flag(250, 400, Side.RIGHT))))
        .containsExactly(new Spot(50, 0));
  }

  @Test
  void closeMarksTakeTwoLanesWhenOneIsNotEnough() {
    List<Spot> spots =
        flags.place(
            List.of(
                new Flag(250, 200, Side.RIGHT),
                new Flag(255, 200, Side.RIGHT),
                new Flag(260, 200, Side.RIGHT)));
    assertThat(Flags.lanes(spots)).isEqualTo(2);
  }

  @Test
  void noLabelLiesOverAnotherWhateverTheMarks() {
    Random random = new Random(7);
    for (int round = 0; round < 50; round++) {
      List<Flag> all =
          Stream.generate(
                  () ->
                      new Flag(
                          random.nextDouble() * 500,
                          20 + random.nextDouble() * 200,
                          Side.values()[random.nextInt(3)]))
              .limit(8)
              .toList();
      List<Spot> spots = flags.place(all);
      for (int i = 0; i < all.size(); i++) {
        assertThat(spots.get(i).left()).isBetween(0.0, 500 - all.get(i).width() + 1e-9);
        for (int j = i + 1; j < all.size(); j++) {
          assertThat(apart(all.get(i), spots.get(i), all.get(j), spots.get(j))).isTrue();
        }
      }
    }
  }

  private static boolean apart(Flag a, Spot at, Flag b, Spot bt) {
    return at.lane() != bt.lane()
        || at.left() + a.width() + 4 <= bt.left() + 1e-9
        || bt.left() + b.width() + 4 <= at.left() + 1e-9;
  }
}
