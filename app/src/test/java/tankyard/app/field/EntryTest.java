package tankyard.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.UnitSystem;

class EntryTest {
  private final Notebook notebook = new Notebook();

  @Test
  void showsAnAmountAsItWasTyped() {
    notebook.type("page-oil", "0.5 gpm");
    assertThat(AmountText.print(notebook.page.oil().typed())).isEqualTo("0.5 gpm");
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("0.5 gpm");
  }

  @Test
  void takesABareNumberInTheUnitTheFieldShows() {
    notebook.type("page-bore", "14");
    assertThat(notebook.page.bore()).isEqualTo(Length.ofFeet(14));
    assertThat(notebook.typed("page-bore").textProperty().get()).isEqualTo("14 ft");
  }

  @Test
  void takesABareNumberInTheUnitSystemsUnitWhereTheFieldIsEmpty() {
    notebook.type("page-runs", "8");
    assertThat(notebook.page.runs().orElseThrow().toHours()).isEqualTo(8);
  }

  @Test
  void namesWhatWasTypedAndWhatIsAccepted() {
    notebook.type("page-oil", "lots");
    assertThat(notebook.typed("page-oil").error()).contains("\"lots\"").contains("bbl/d");
    assertThat(notebook.page.oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(3));
    assertThat(notebook.names).isEmpty();
  }

  @Test
  void refusesAnAmountOfAnotherDimension() {
    notebook.type("page-oil", "3 psi");
    assertThat(notebook.typed("page-oil").error()).contains("\"psi\"").contains("liquid rate");
  }

  @Test
  void refusesAnAmountThatCannotBe() {
    notebook.type("page-oil", "-3 bbl/d");
    assertThat(notebook.typed("page-oil").error()).contains("less than zero");
  }

  @Test
  void keepsWhatWasTypedWhenItIsWrong() {
    notebook.type("page-oil", "12 bbl/dd");
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("12 bbl/dd");
  }

  @Test
  void keepsWhatWasTypedWhenTheDocumentChangesMeanwhile() {
    notebook.typed("page-oil").textProperty().set("nonsense");
    notebook.type("page-bore", "9 ft");
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("nonsense");
  }

  @Test
  void keepsWhatWasTypedWhenTheFormIsMadeAnew() {
    notebook.type("page-oil", "nonsense");
    notebook.build();
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("nonsense");
    assertThat(notebook.typed("page-oil").error()).contains("nonsense");
  }

  @Test
  void forgetsTheDraftOnceItIsTaken() {
    notebook.type("page-oil", "nonsense");
    notebook.type("page-oil", "7");
    notebook.page = new Notebook().page;
    notebook.build();
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("3 bbl/d");
  }

  @Test
  void followsTheDocumentAgainAfterAValueTypedJustAsItIsPrinted() {
    notebook.type("page-oil", "7 bbl/d");
    notebook.page = new Notebook().page;
    notebook.form.show(notebook.page);
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("3 bbl/d");
  }

  @Test
  void theReasonGoesAwayAsSoonAsItIsMended() {
    notebook.type("page-oil", "nonsense");
    notebook.typed("page-oil").textProperty().set("12 gpm");
    assertThat(notebook.typed("page-oil").error()).isEmpty();
  }

  @Test
  void putsBackWhatWasThere() {
    notebook.type("page-oil", "nonsense");
    notebook.typed("page-oil").restore();
    assertThat(notebook.typed("page-oil").textProperty().get()).isEqualTo("3 bbl/d");
    assertThat(notebook.typed("page-oil").error()).isEmpty();
  }

  @Test
  void emptyMeansAssumedAndSaysWhat() {
    notebook.type("page-runs", "8 h");
    notebook.typed("page-runs").clear();
    assertThat(notebook.page.runs()).isEqualTo(Optional.empty());
    assertThat(notebook.typed("page-runs").promptProperty().get()).isEqualTo("24 h assumed");
  }

  @Test
  void aNeededAmountCannotBeEmptied() {
    notebook.type("page-oil", "");
    assertThat(notebook.typed("page-oil").error()).startsWith("Nothing typed");
  }

  @Test
  void theSameValueInOtherWordsIsNoStep() {
    notebook.type("page-bore", "12 ft ");
    assertThat(notebook.page).isEqualTo(new Notebook().page);
    assertThat(notebook.typed("page-bore").textProperty().get()).isEqualTo("12 ft");
  }

  @Test
  void aBareNumberOfAnEmptyFieldFollowsTheUnitSystem() {
    notebook.units = UnitSystem.METRIC;
    notebook.type("page-runs", "6");
    assertThat(notebook.page.runs().orElseThrow().toHours()).isEqualTo(6);
  }

  @Test
  void namesTheStepAndMergesByField() {
    notebook.type("page-oil", "5");
    assertThat(notebook.names).containsExactly("oil of Page 1");
    assertThat(notebook.keys).containsExactly("page-1/page-oil");
  }

  @Test
  void aCountStaysWithinItsLimits() {
    notebook.type("page-joints", "100");
    assertThat(notebook.typed("page-joints").error()).contains("100").contains("1 to 99");
    notebook.type("page-joints", "12");
    assertThat(notebook.page.joints()).isEqualTo(12);
  }

  @Test
  void aNameCannotBeEmptied() {
    notebook.type("page-name", " ");
    assertThat(notebook.typed("page-name").error()).contains("name is needed");
  }

  @Test
  @SuppressWarnings("unchecked")
  void aChoiceChangesThePageAndFollowsIt() {
    var colour =
        (ChoiceEntry<Notebook.Page, Notebook.Colour>)
            notebook.form.entry("page-colour").orElseThrow();
    colour.choose(Notebook.Colour.BLUE);
    assertThat(notebook.page.colour()).isEqualTo(Notebook.Colour.BLUE);
    assertThat(colour.chosenProperty().get()).isEqualTo(Notebook.Colour.BLUE);
  }
}
