package tankyard.app.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.field.TypedEntry;
import tankyard.engine.quick.QuickSum;
import tankyard.engine.quick.QuickValues;
import tankyard.engine.quick.sums.AllSums;
import tankyard.engine.working.Working;

class SumsViewModelTest {
  private final List<Working> shown = new ArrayList<>();
  private final SumsViewModel model = new SumsViewModel(AllSums.list(), shown::add);

  private void pick(String id) {
    model.pickedProperty().set(AllSums.find(id).orElseThrow());
  }

  private TypedEntry<TypedSum> field(String id) {
    return (TypedEntry<TypedSum>) model.formProperty().get().entry(id).orElseThrow();
  }

  private void type(String id, String text) {
    field(id).textProperty().set(text);
    field(id).commit();
  }

  private SumAnswer answer() {
    return model.answerProperty().get();
  }

  @Test
  void everySumAnswersItsOwnExample() {
    for (QuickSum sum : AllSums.list()) {
      model.pickedProperty().set(sum);
      model.fillExample();
      assertThat(answer().message()).as(sum.id()).isEmpty();
      assertThat(answer().numbers()).as(sum.id()).isNotEmpty();
    }
  }

  @Test
  void saysWhatIsStillToBeTyped() {
    pick("barrels-per-foot");
    assertThat(answer().message()).startsWith("Still to be typed: ");
    assertThat(answer().numbers()).isEmpty();
  }

  @Test
  void answersAsTheEngineDoes() {
    pick("barrels-per-foot");
    type("sum-barrels-per-foot-diameter", "12 ft");
    QuickSum sum = AllSums.find("barrels-per-foot").orElseThrow();
    String wanted =
        sum.compute(QuickValues.read(sum, java.util.Map.of("diameter", "12 ft")))
            .answers()
            .get(0)
            .print();
    assertThat(answer().numbers().get(0).text()).isEqualTo(wanted);
  }

  @Test
  void aWrongValueSaysWhyBesideItsField() {
    pick("barrels-per-foot");
    type("sum-barrels-per-foot-diameter", "wide");
    assertThat(field("sum-barrels-per-foot-diameter").error())
        .startsWith("\"wide\" is no number")
        .doesNotContain("--");
  }

  @Test
  void valuesThatDoNotGoTogetherAreExplained() {
    pick("pipe-loss");
    model.fillExample();
    type("sum-pipe-loss-rise", "9000 ft");
    assertThat(answer().numbers()).isEmpty();
    assertThat(answer().message()).contains("can't rise").doesNotContain("--");
  }

  @Test
  void whatWasTypedIsStillThereAfterAnotherSum() {
    pick("barrels-per-foot");
    type("sum-barrels-per-foot-diameter", "12 ft");
    pick("pipe-loss");
    pick("barrels-per-foot");
    assertThat(field("sum-barrels-per-foot-diameter").textProperty().get()).isEqualTo("12 ft");
    assertThat(answer().numbers()).isNotEmpty();
  }

  @Test
  void aNumberLeadsToItsWorking() {
    pick("pipe-loss");
    model.fillExample();
    model.show(answer().numbers().get(0).working().get());
    assertThat(shown.get(0).title()).isEqualTo("Pressure to push it through");
  }

  @Test
  void clearGoesBackToNothingTyped() {
    pick("pipe-loss");
    model.fillExample();
    model.clear();
    assertThat(answer().message()).startsWith("Still to be typed");
  }
}
