package tankyard.engine.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.units.Length;

class NominalSizeTest {
  @ParameterizedTest
  @CsvSource({"0.5, 1/2 in", "0.75, 3/4 in", "1.25, 1 1/4 in", "2, 2 in", "2.6, 2.6 in"})
  void isWrittenAsTheTradeWritesIt(double inches, String words) {
    assertThat(NominalSize.ofInches(inches).words()).isEqualTo(words);
  }

  @Test
  void isReadBackFromItsWords() {
    for (NominalSize size : NominalSize.standard()) {
      assertThat(NominalSize.parse(size.words())).isEqualTo(size);
    }
  }

  @Test
  void isFoundByOutsideDiameter() {
    assertThat(NominalSize.ofOutside(Length.ofInches(2.375))).contains(NominalSize.ofInches(2));
    assertThat(NominalSize.ofOutside(Length.ofInches(2.2))).isEmpty();
  }

  /** Bores of SDR 11 poly by outside diameter x 9/11. */
  @ParameterizedTest
  @CsvSource({"1.358, 1.25", "1.555, 1.5", "1.943, 2", "2.864, 3", "3.682, 4", "5.420, 6"})
  void isGuessedFromABore(double bore, double nominal) {
    assertThat(NominalSize.nearBore(Length.ofInches(bore)))
        .isEqualTo(NominalSize.ofInches(nominal));
  }
}
