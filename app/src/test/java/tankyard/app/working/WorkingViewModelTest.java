package tankyard.app.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

class WorkingViewModelTest {
  static final Working RATE =
      Working.of(
          "design water rate",
          "Q",
          "f*q",
          Unit.GALLON_PER_MINUTE,
          Source.commonPractice("twice the day's average"),
          Term.number("f", "design factor", 2),
          Term.of("q", "day's average", 3.15, Unit.GALLON_PER_MINUTE));
  static final Working LOSS =
      Working.of(
              "Loss in the dump valve",
              "dp",
              "SG*(Q/Cv)^2",
              Unit.PSI,
              Source.published("IEC 60534-2-1, liquid sizing equation"),
              Term.number("SG", "specific gravity of the brine", 1.05),
              Term.of("Q", "design water rate", 6.3, Unit.GALLON_PER_MINUTE),
              Term.of("Cv", "valve coefficient at its working travel", 6, Unit.CV))
          .from(List.of(RATE));

  private final List<String> clipboard = new ArrayList<>();
  private final WorkingViewModel model = new WorkingViewModel(clipboard::add);

  @Test
  void goesIntoTheWorkingOfAnInputAndBack() {
    model.open(LOSS);
    Working inner = WorkingViewModel.workingOf(LOSS, LOSS.terms().get(1)).orElseThrow();
    model.goInto(inner);
    assertThat(model.current()).contains(RATE);
    assertThat(model.canGoBack()).isTrue();
    model.back();
    assertThat(model.current()).contains(LOSS);
    assertThat(model.canGoBack()).isFalse();
  }

  @Test
  void anInputThatWasTypedHasNoWorking() {
    assertThat(WorkingViewModel.workingOf(LOSS, LOSS.terms().get(0))).isEmpty();
  }

  @Test
  void openingAnotherNumberStartsANewTrail() {
    model.open(LOSS);
    model.goInto(RATE);
    model.open(LOSS);
    assertThat(model.trailProperty().get()).containsExactly(LOSS);
  }

  @Test
  void listsWorkingsThatStandBehindNoSingleInput() {
    Working sum =
        Working.of("Sum", "s", "1 + 1", Unit.PSI, Source.commonPractice("x")).from(List.of(RATE));
    assertThat(WorkingViewModel.others(sum)).containsExactly(RATE);
    assertThat(WorkingViewModel.others(LOSS)).isEmpty();
  }

  @Test
  void copiesFormulaInputsAndSourceWithWhatIsBehindThem() {
    model.open(LOSS);
    model.copy();
    assertThat(clipboard.get(0))
        .contains("dp = SG*(Q/Cv)^2 = 1.158 psi")
        .contains("Q = 6.3 gpm (design water rate)")
        .contains("IEC 60534-2-1")
        .contains("    Q = f*q = 6.3 gpm");
  }
}
