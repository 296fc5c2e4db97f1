package tankyard.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.Rename;
import tankyard.engine.lease.Status;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.LiquidRate;

/** One field after the other: steps, refusals, and what was typed. */
class SheetEditTest extends SheetFixture {
  @Test
  void anEditIsAStepNamedAfterTheField() {
    desk.selection.select("W1");
    type("well-oil", "5 bbl/d");
    assertThat(well("W1").oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(5));
    assertThat(desk.store.undoNameProperty().get()).isEqualTo("Change oil of Well 1");
  }

  @Test
  void undoBringsTheFieldBack() {
    desk.selection.select("W1");
    type("well-oil", "5");
    desk.store.undo();
    assertThat(typed("well-oil").textProperty().get()).isEqualTo("2 bbl/d");
  }

  @Test
  void editsOfOneFieldOneAfterTheOtherAreOneStep() {
    desk.selection.select("W1");
    type("well-oil", "5");
    type("well-oil", "6");
    desk.store.undo();
    assertThat(well("W1").oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(2));
  }

  @Test
  void editsOfTwoFieldsAreTwoSteps() {
    desk.selection.select("W1");
    type("well-oil", "5");
    type("well-water", "60");
    desk.store.undo();
    assertThat(well("W1").oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(5));
  }

  @Test
  void whatCouldNeverBeSavedIsRefusedBesideTheField() {
    desk.selection.select("W1");
    type("well-oil", "900000 bbl/d");
    assertThat(entry("well-oil").error()).contains("900000").contains("Accepted");
    assertThat(well("W1").oil()).isEqualTo(LiquidRate.ofBarrelsPerDay(2));
    assertThat(typed("well-oil").textProperty().get()).isEqualTo("900000 bbl/d");
  }

  @Test
  void heightsThatContradictEachOtherAreRefused() {
    desk.selection.select("OT1");
    type("tank-overflow-height", "16 ft");
    assertThat(entry("tank-overflow-height").error()).contains("shell height");
  }

  @Test
  void whatWasTypedIsStillThereAfterLookingAtAnotherThing() {
    desk.selection.select("W1");
    type("well-oil", "lots");
    desk.selection.select("W2");
    assertThat(typed("well-oil").textProperty().get()).isEqualTo("2 bbl/d");
    desk.selection.select("W1");
    assertThat(typed("well-oil").textProperty().get()).isEqualTo("lots");
    assertThat(entry("well-oil").error()).contains("lots");
  }

  @Test
  void typingAPlaceMovesTheThingAndLeavesItsHeightBehind() {
    desk.selection.select("W1");
    int heights = lease().spotHeights().size();
    type("well-east", "150 m");
    assertThat(AmountText.print(well("W1").at().east().typed())).isEqualTo("150 m");
    assertThat(well("W1").ground()).isEmpty();
    assertThat(lease().spotHeights()).hasSize(heights + 1);
  }

  @Test
  void severalThingsGetOneStatusInOneStep() {
    desk.selection.select(List.of("W1", "T1", "L6"));
    assertThat(model.headProperty().get().kind()).isEqualTo("1 tee, 1 water leg, 1 well");
    choose("several-status", Optional.of(Status.REMOVE));
    assertThat(well("W1").status()).isEqualTo(Status.REMOVE);
    assertThat(lease().line("L6").orElseThrow().status()).isEqualTo(Status.REMOVE);
    desk.store.undo();
    assertThat(well("W1").status()).isEqualTo(Status.HAVE);
  }

  @Test
  void renamingChangesTheTitleAndKeepsTheFields() {
    desk.selection.select("W1");
    SheetPage before = model.pageProperty().get();
    desk.store.edit(new Rename("W1", "Old Bess"));
    assertThat(model.headProperty().get().title()).isEqualTo("Old Bess");
    assertThat(model.pageProperty().get()).isSameAs(before);
    type("well-oil", "4");
    assertThat(desk.store.undoNameProperty().get()).isEqualTo("Change oil of Old Bess");
  }
}
