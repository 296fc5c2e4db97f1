package tankyard.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RootsTest {
  @Test
  void it_finds_the_crossing() {
    assertThat(Roots.between("root", x -> x * x - 2, 0, 2)).isCloseTo(Math.sqrt(2), within(1e-14));
  }

  @Test
  void no_crossing_is_said_in_words() {
    assertThatThrownBy(() -> Roots.between("depth", x -> x + 1, 0, 2))
        .hasMessage("No depth between 0.0 and 2.0 fits");
  }
}
