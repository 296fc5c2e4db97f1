package tankyard.app.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which rows stand once across all cases instead of once in each. */
class SameWordsTest {
  private static boolean same(String unit, String... texts) {
    List<Figure> figures = List.of(texts).stream().map(Figure::plain).toList();
    return new FigureRow("Goes to", unit, "", figures).isSameWords();
  }

  @Test
  void aNameThatIsTheSameInEveryCaseStandsOnce() {
    assertThat(same("", "Separator", "Separator")).isTrue();
    assertThat(same("", "Separator", "Gun barrel")).isFalse();
    assertThat(same("", "Separator")).isFalse();
  }

  @Test
  void numbersStandInTheirColumns() {
    assertThat(same("psi", "12", "12")).isFalse();
    assertThat(same("", "12", "12")).isFalse();
    assertThat(same("", "–", "–")).isFalse();
  }
}
