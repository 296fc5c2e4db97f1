package tankyard.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tankyard.app.edit.Blanks;
import tankyard.app.edit.Place;
import tankyard.app.edit.ThingKind;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Landmark;
import tankyard.engine.lease.MapPoint;

/** What is added to a sheet by the row, changed and taken out again. */
class SheetRowsTest extends SheetFixture {
  @Test
  void aPegCanBeAddedGivenAHeightAndTakenOut() {
    desk.selection.select("L1");
    action("line-peg-add").run().run();
    assertThat(lease().line("L1").orElseThrow().route()).hasSize(1);
    type("line-peg-1-ground", "1012 ft");
    assertThat(lease().line("L1").orElseThrow().route().get(0).ground().orElseThrow().toFeet())
        .isEqualTo(1012);
    action("line-peg-1-remove").run().run();
    assertThat(lease().line("L1").orElseThrow().route()).isEmpty();
  }

  @Test
  void aFittingCanBeAddedCountedAndTakenOut() {
    desk.selection.select("L1");
    action("line-fitting-add").run().run();
    type("line-fitting-1-count", "3");
    assertThat(lease().line("L1").orElseThrow().fittings().get(0).count()).isEqualTo(3);
    type("line-fitting-1-count", "none");
    assertThat(entry("line-fitting-1-count").error()).contains("1 to 999");
    action("line-fitting-1-remove").run().run();
    assertThat(lease().line("L1").orElseThrow().fittings()).isEmpty();
  }

  @Test
  void aCaseCanBeAddedChangedAndTakenOut() {
    action("case-add").run().run();
    type("case-3-water", "2");
    assertThat(lease().cases().get(2).waterFactor()).isEqualTo(2);
    action("case-3-remove").run().run();
    assertThat(lease().cases()).hasSize(2);
  }

  @Test
  void aViscosityIsAddedWholeOrNotAtAll() {
    type("viscosity-add", "40 F");
    assertThat(entry("viscosity-add").error()).contains("a comma");
    type("viscosity-add", "40 F, 120 cP");
    assertThat(lease().fluids().oilViscosity()).hasSize(1);
    type("viscosity-1-viscosity", "130");
    assertThat(lease().fluids().oilViscosity().get(0).viscosity().toCentipoise()).isEqualTo(130);
  }

  @Test
  void aPipeNoCatalogueListsCanBeAddedAndLaid() {
    type("own-pipe-add", "yard pipe");
    assertThat(entry("own-pipe-add").error()).contains("a comma");
    type("own-pipe-add", "yard pipe, 1.9");
    type("own-pipe-1-rating-water", "150 psi");
    assertThat(lease().ownPipes().get(0).bore().toInches()).isEqualTo(1.9);
    desk.selection.select("L1");
    choose("line-pipe", "own-1");
    assertThat(lease().line("L1").orElseThrow().pipe()).isEqualTo("own-1");
  }

  @Test
  void twoPointsAddedOneAfterTheOtherAreBothThere() {
    type("viscosity-add", "40 F, 120 cP");
    type("viscosity-add", "100 F, 10 cP");
    assertThat(lease().fluids().oilViscosity()).hasSize(2);
    desk.store.undo();
    assertThat(lease().fluids().oilViscosity()).hasSize(1);
  }

  @Test
  void aBermIsDrawnRoundVesselsAndTanks() {
    action("berm-add").run().run();
    Berm berm = lease().berms().get(0);
    assertThat(berm.corners()).hasSize(4);
    assertThat(berm.corners().get(0).east().toFeet()).isEqualTo(460 - 5 - 10);
    assertThat(berm.corners().get(1).east().toFeet()).isEqualTo(700 + 5 + 10);
    desk.selection.select(berm.id());
    type("berm-rain", "6");
    assertThat(lease().berms().get(0).rain().orElseThrow().toInches()).isEqualTo(6);
  }

  @Test
  void cornersAreTypedAddedAndTakenOut() {
    action("berm-add").run().run();
    desk.selection.select(lease().berms().get(0).id());
    type("corner-2-east", "800");
    assertThat(lease().berms().get(0).corners().get(1).east().toFeet()).isEqualTo(800);
    action("corner-add").run().run();
    assertThat(lease().berms().get(0).corners()).hasSize(5);
    desk.store.undo();
    assertThat(lease().berms().get(0).corners()).hasSize(4);
  }

  @Test
  void aSetbackIsTypedInAnyUnit() {
    Landmark house =
        (Landmark) new Blanks("").thing(lease(), ThingKind.LANDMARK, MapPoint.ofFeet(0, 0));
    desk.store.edit(new Place(house));
    desk.selection.select(house.id());
    type("landmark-setback", "60 m");
    choose("landmark-what", Landmark.What.POND);
    assertThat(lease().landmarks().get(0).setback().orElseThrow().metres()).isEqualTo(60);
    assertThat(lease().landmarks().get(0).what()).isEqualTo(Landmark.What.POND);
  }
}
