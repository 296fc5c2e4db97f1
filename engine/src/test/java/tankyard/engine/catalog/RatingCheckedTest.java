package tankyard.engine.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

class RatingCheckedTest {
  private static final Temperature AT_73 = Temperature.ofFahrenheit(73);

  /** Ratings printed in a maker's table of ASTM D3035 PE4710 pipe, water, 73 degF. */
  @ParameterizedTest
  @CsvSource({"7, 333", "9, 250", "11, 200", "13.5, 160", "17, 125"})
  void polyWithWaterHasTheMakersRating(double ratio, double psi) {
    RatingLaw law = new PolyRating(Pressure.ofPsi(1000), ratio);
    assertThat(psi(law, 73, false)).isCloseTo(psi, within(0.5));
  }

  /**
   * Pipeline Rules of Thumb Handbook pp. 111-112: SDR 11, S 1600 psi with its factor 0.5, service
   * factor 0.50 with crude inside: 160 psi in water, 80 psi in oil.
   */
  @Test
  void polyWithOilInsideHasHalf() {
    RatingLaw law = new PolyRating(Pressure.ofPsi(800), 11);
    assertThat(psi(law, 73, false)).isCloseTo(160, within(0.01));
    assertThat(psi(law, 73, true)).isCloseTo(80, within(0.01));
  }

  /** 140 degF is where the hydrostatic design basis of 800 psi is half of the 1600 psi at 73. */
  @Test
  void polyAt140HasHalfAndAboveNothing() {
    RatingLaw law = new PolyRating(Pressure.ofPsi(1000), 11);
    assertThat(psi(law, 140, false)).isCloseTo(100, within(0.01));
    assertThat(psi(law, 141, false)).isZero();
    assertThat(law.at(Temperature.ofFahrenheit(141), false).orElseThrow().cautions())
        .extracting(Caution::id)
        .containsExactly("pipe-too-hot");
  }

  @Test
  void coldPolyGetsNoCredit() {
    RatingLaw law = new PolyRating(Pressure.ofPsi(1000), 11);
    assertThat(psi(law, 40, false)).isCloseTo(psi(law, 73, false), within(1e-9));
  }

  /** Schedule 80 ratings printed by a maker (PVC, plain end, 73 degF). */
  @ParameterizedTest
  @CsvSource({"1.05, 0.154, 688", "1.66, 0.191, 520", "2.375, 0.218, 404", "4.5, 0.337, 324"})
  void pvcHasTheMakersRating(double outside, double wall, double psi) {
    RatingLaw law = pvc(outside, wall);
    assertThat(psi(law, 73, false)).isCloseTo(psi, within(0.6));
  }

  @Test
  void pvcHasNoRatingWithOilInside() {
    Computed<Pressure> rating = pvc(2.375, 0.218).at(AT_73, true).orElseThrow();
    assertThat(rating.value().toPsi()).isZero();
    assertThat(rating.cautions()).extracting(Caution::id).containsExactly("pipe-water-only");
  }

  /** Barlow by hand: 2 x 35,000 x 0.154 x 0.875 / 2.375 x 0.72 = 2,859.6 psi (49 CFR 192.105). */
  @Test
  void plainSteelIsBarlowLessMillTolerance() {
    assertThat(psi(steel(0, 10_000), 60, true)).isCloseTo(2859.6, within(0.1));
  }

  @Test
  void threadedSteelLosesItsThreadAndNeverBeatsItsFittings() {
    double byHand = 2 * 35_000 * (0.154 * 0.875 - 0.0696) / 2.375 * 0.72;
    assertThat(psi(steel(0.0696, 10_000), 60, true)).isCloseTo(byHand, within(1e-6));
    assertThat(psi(steel(0.0696, 300), 60, true)).isCloseTo(300, within(1e-9));
  }

  @Test
  void anUnknownRatingIsNeitherPassNorLimit() {
    RatingLaw law = new TypedRating(Optional.of(Pressure.ofPsi(160)), Optional.empty());
    assertThat(law.at(AT_73, false)).isPresent();
    assertThat(law.at(AT_73, true)).isEmpty();
  }

  private static RatingLaw pvc(double outside, double wall) {
    return new PvcRating(Pressure.ofPsi(2000), Length.ofInches(outside), Length.ofInches(wall));
  }

  private static RatingLaw steel(double thread, double fittings) {
    return new SteelRating(
        Pressure.ofPsi(35_000),
        Length.ofInches(2.375),
        Length.ofInches(0.154),
        Length.ofInches(thread),
        Pressure.ofPsi(fittings),
        Source.memory("fittings"));
  }

  /** The rating, having seen that the printed working gives the same. */
  private static double psi(RatingLaw law, double fahrenheit, boolean oil) {
    Computed<Pressure> rating = law.at(Temperature.ofFahrenheit(fahrenheit), oil).orElseThrow();
    double psi = rating.value().toPsi();
    assertThat(rating.working().value()).isCloseTo(psi, within(1e-4 + 1e-6 * psi));
    return psi;
  }
}
