package tankyard.engine.vessels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

class VesselTest {
  private static final double R = 0.381;

  static Stream<Head> heads() {
    return Stream.of(
        new FlatHead(),
        Head.twoToOne(R),
        Head.hemispherical(R),
        new ConicalHead(R, 0.3),
        TorisphericalHead.flangedAndDished(R));
  }

  private static List<Vessel> vessels(Head head) {
    return List.of(new LyingVessel(R, 3, head), new StandingVessel(R, 3, head));
  }

  @ParameterizedTest
  @MethodSource("heads")
  void volume_rises_with_height_and_the_height_for_it_comes_back(Head head) {
    for (Vessel vessel : vessels(head)) {
      double last = 0;
      for (int i = 1; i < 40; i++) {
        double h = vessel.heightM() * i / 40;
        double volume = vessel.belowM3(h);
        assertThat(volume).isGreaterThan(last);
        assertThat(vessel.heightForM(volume)).isCloseTo(h, within(1e-9));
        last = volume;
      }
      assertThat(vessel.belowM3(-1)).isZero();
      assertThat(vessel.belowM3(99)).isEqualTo(vessel.fullM3());
    }
  }

  @ParameterizedTest
  @MethodSource("heads")
  void half_full_is_half_of_it(Head head) {
    for (Vessel vessel : vessels(head)) {
      assertThat(vessel.belowM3(vessel.heightM() / 2))
          .isCloseTo(vessel.fullM3() / 2, within(1e-7 * vessel.fullM3()));
    }
  }

  @ParameterizedTest
  @MethodSource("heads")
  void lying_and_standing_hold_the_same_full(Head head) {
    List<Vessel> both = vessels(head);
    assertThat(both.get(0).fullM3())
        .isCloseTo(both.get(1).fullM3(), within(1e-7 * both.get(0).fullM3()));
  }

  @Test
  void a_dished_head_without_a_knuckle_to_speak_of_and_a_half_crown_is_a_hemisphere() {
    TorisphericalHead dished = new TorisphericalHead(R, 0.5, 0.2);
    Head ball = Head.hemispherical(R);
    for (double h : new double[] {0.05, 0.2, 0.381, 0.5, 0.75}) {
      assertThat(dished.lyingM3(h)).isCloseTo(ball.lyingM3(h), within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("heads")
  void printed_workings_give_the_volume_again(Head head) {
    for (Vessel vessel : vessels(head)) {
      for (double inches : new double[] {3, 15, 27}) {
        var volume = vessel.below(Length.of(inches, Unit.INCH));
        double barrels = volume.value().toBarrels();
        assertThat(volume.working().value()).isCloseTo(barrels, within(1e-5 * barrels + 1e-9));
      }
    }
  }

  @Test
  void more_than_it_holds_is_refused() {
    assertThatThrownBy(() -> new LyingVessel(R, 3, new FlatHead()).heightForM(9))
        .hasMessageContaining("do not go into a vessel");
  }
}
