package tankyard.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Rename;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallLease;
import tankyard.app.field.ChoiceEntry;
import tankyard.app.field.Entry;
import tankyard.app.field.FormAction;
import tankyard.app.field.Rows;
import tankyard.app.field.TypedEntry;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.LiquidRate;

class SheetViewModelTest {
  private final Desk desk = new Desk();
  private final SheetViewModel model = SheetPictures.model(desk);

  private Lease lease() {
    return desk.store.lease();
  }

  private Well well(String id) {
    return (Well) lease().thing(id).orElseThrow();
  }

  private Entry<Lease> entry(String id) {
    return model.pageProperty().get().form().entry(id).orElseThrow();
  }

  private TypedEntry<Lease> typed(String id) {
    return (TypedEntry<Lease>) entry(id);
  }

  private void type(String id, String text) {
    typed(id).textProperty().set(text);
    typed(id).commit();
  }

  @SuppressWarnings("unchecked")
  private <T> void choose(String id, T item) {
    ((ChoiceEntry<Lease, T>) entry(id)).choose(item);
  }

  private FormAction action(String id) {
    return model.pageProperty().get().form().blocks().stream()
        .flatMap(
            block ->
                java.util.stream.Stream.concat(
                    block.actions().stream(),
                    block instanceof Rows<Lease> rows
                        ? rows.rows().stream().flatMap(row -> row.remove().stream())
                        : java.util.stream.Stream.empty()))
        .filter(a -> a.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyThingAndLineHasASheetWithItsName() {
    lease()
        .things()
        .forEach(
            thing -> {
              desk.selection.select(thing.id());
              assertThat(model.headProperty().get().title()).isEqualTo(thing.name());
              assertThat(model.headProperty().get().kind()).isEqualTo(thing.kind());
              assertThat(model.pageProperty().get().form().entries()).hasSizeGreaterThan(4);
            });
    lease()
        .lines()
        .forEach(
            line -> {
              desk.selection.select(line.id());
              assertThat(model.headProperty().get().title()).isEqualTo(line.name());
            });
  }

  @Test
  void everyFieldSaysWhyItMattersAndHasAnIdOfItsOwn() {
    for (List<String> ids :
        List.of(
            List.<String>of(),
            List.of("W1"),
            List.of("T1"),
            List.of("S1"),
            List.of("OT1"),
            List.of("WT1"),
            List.of("P1"),
            List.of("IW1"),
            List.of("L6"))) {
      desk.selection.select(ids);
      List<Entry<Lease>> entries = model.pageProperty().get().form().entries();
      assertThat(entries).allSatisfy(e -> assertThat(e.why()).endsWith("."));
      assertThat(entries.stream().map(Entry::id)).doesNotHaveDuplicates();
    }
  }

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
  void aCatalogueSizeFillsInTheTanksDimensions() {
    desk.selection.select("OT1");
    choose("tank-model", Optional.of("tank-steel-90"));
    Tank tank = (Tank) lease().thing("OT1").orElseThrow();
    assertThat(tank.shellHeight().toFeet()).isEqualTo(10);
    assertThat(tank.overflowHeight().toFeet()).isEqualTo(9.5);
    assertThat(tank.inletHeight().toFeet()).isEqualTo(9.5);
    assertThat(typed("tank-shell-height").textProperty().get()).isEqualTo("10 ft");
  }

  @Test
  void aFloatGetsItsOwnFieldsOnceItIsChosen() {
    desk.selection.select("S1");
    assertThat(model.pageProperty().get().form().entry("float-diameter")).isEmpty();
    ChoiceEntry<?, ?> floats = (ChoiceEntry<?, ?>) entry("dump-valve-float-ball");
    choose("dump-valve-float-ball", floats.items().get(1));
    Separator separator = (Separator) lease().thing("S1").orElseThrow();
    assertThat(separator.dumpValve().floatBall()).isPresent();
    assertThat(typed("float-diameter").textProperty().get()).endsWith("in");
  }

  @Test
  void anEmptyFieldSaysWhatIsAssumed() {
    desk.selection.select("W1");
    assertThat(typed("well-runs-per-day").promptProperty().get()).isEqualTo("24 h assumed");
    desk.selection.select("OT1");
    assertThat(typed("tank-switch-height").promptProperty().get()).isEqualTo("13.5 ft assumed");
  }

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
  void withNothingPickedItIsTheLeasesOwnSheet() {
    desk.selection.clear();
    assertThat(model.headProperty().get().title()).isEqualTo("Small lease");
    type("practice-margin", "2 psi");
    assertThat(lease().practice().margin().orElseThrow().toPsi()).isEqualTo(2);
    type("prices-contingency", "15");
    assertThat(lease().prices().contingency().orElseThrow().toPercent()).isEqualTo(15);
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
  void aBermIsDrawnRoundTheTanks() {
    action("berm-add").run().run();
    var berm = lease().site().berm().orElseThrow();
    assertThat(berm.corner().east().toFeet()).isEqualTo(540 - 5 - 10);
    assertThat(berm.length().toFeet()).isEqualTo(700 - 540 + 30);
    type("berm-rain", "6");
    assertThat(lease().site().berm().orElseThrow().rain().orElseThrow().toInches()).isEqualTo(6);
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

  @Test
  void deletingWhatIsPickedGoesBackToTheLease() {
    desk.selection.select("W1");
    model.pageProperty().get().actions().get(0).run().run();
    assertThat(lease().thing("W1")).isEmpty();
    assertThat(model.headProperty().get().title()).isEqualTo("Small lease");
  }

  @Test
  void saysWhyAButtonDidNothing() {
    LeaseStore stubborn = new LeaseStore(SmallLease.lease(), l -> Optional.of("Not today."));
    SheetViewModel refusing =
        new SheetViewModel(
            stubborn,
            new Selection(stubborn),
            new ViewSettings(stubborn),
            desk.solve,
            Catalog.empty(),
            desk.shown::add);
    refusing.pageProperty().get().form().blocks().stream()
        .flatMap(block -> block.actions().stream())
        .filter(a -> a.id().equals("case-add"))
        .findFirst()
        .orElseThrow()
        .run()
        .run();
    assertThat(refusing.refusalProperty().get()).isEqualTo("Not today.");
  }

  @Test
  void showsResultsFindingsAndWhatWasAssumed() {
    desk.selection.select("OT1");
    SheetResults results = model.resultsProperty().get();
    assertThat(results.table().sets().get(0).rows()).isNotEmpty();
    assertThat(results.notices().get(0).severity()).isEqualTo("fix");
    desk.selection.select("W1");
    assertThat(model.resultsProperty().get().assumed()).containsExactly("runs 24 h a day");
  }

  @Test
  void aSeparatorShowsBothEndsOfItsWindow() {
    desk.selection.select("S1");
    List<SheetResults.WorkedFact> facts = model.resultsProperty().get().facts();
    assertThat(facts.get(0).text()).isEqualTo("14.5 psi, crest at 126 ft on Line 6");
    model.show(facts.get(0).working().get());
    assertThat(desk.shown.get(0).value()).isEqualTo(14.5);
  }

  @Test
  void thingsOfEveryKindAreKnownToTheSheet() {
    assertThat(lease().things().map(Thing::kind).distinct()).hasSize(7);
  }
}
