package tankyard.engine.pipes.gasliquid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tankyard.engine.working.Caution;

/** What a stretch of gas and liquid makes be said, and up to where nothing is. */
class GasLiquidCautionsTest {
  private static final double DOWN = -0.05;

  private static List<String> said(Gradient here, double slope) {
    GasLiquidCautions cautions = new GasLiquidCautions();
    cautions.look(here, slope);
    cautions.look(here, slope);
    return cautions.said().stream().map(Caution::id).toList();
  }

  private static Gradient stretch(FlowPattern pattern, double holdUp, double acceleration) {
    return new Gradient(pattern, 0.2, holdUp, 3, 200, 0, 50, acceleration);
  }

  @Test
  void oneOfTheTwoAloneNeedsNoCorrelation() {
    assertThat(said(stretch(FlowPattern.LIQUID, 0.3, 0), 0)).isEmpty();
    assertThat(said(stretch(FlowPattern.GAS, 0.3, 0), 0)).isEmpty();
    assertThat(said(stretch(FlowPattern.INTERMITTENT, 0.3, 0), 0))
        .containsExactly("gas-liquid-correlation");
  }

  /** A fifth of the flow is liquid: downhill it should fill no less of the pipe. */
  @ParameterizedTest
  @CsvSource({"0.21, -0.05, false", "0.20, -0.05, true", "0.20, 0, false", "0.20, 0.05, false"})
  void aDrainedFallIsSaidAndAClimbIsNot(double holdUp, double slope, boolean drained) {
    assertThat(
            said(stretch(FlowPattern.SEGREGATED, holdUp, 0), slope).contains("gas-liquid-downhill"))
        .isEqualTo(drained);
  }

  @ParameterizedTest
  @CsvSource({"0.1, false, false", "0.11, true, false", "0.9, true, false", "0.91, false, true"})
  void fastGasIsSaidAndNearSoundInItsPlace(double acceleration, boolean fast, boolean sound) {
    List<String> said = said(stretch(FlowPattern.INTERMITTENT, 0.3, acceleration), DOWN);
    assertThat(said.contains("gas-fast")).isEqualTo(fast);
    assertThat(said.contains("gas-near-sound")).isEqualTo(sound);
  }
}
