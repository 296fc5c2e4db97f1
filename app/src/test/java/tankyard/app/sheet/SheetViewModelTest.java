package tankyard.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.example.SmallLease;
import tankyard.app.field.ChoiceEntry;
import tankyard.app.field.Entry;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;

/** Which sheet there is, what stands on it and what it leads to. */
class SheetViewModelTest extends SheetFixture {
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
  void withNothingPickedItIsTheLeasesOwnSheet() {
    desk.selection.clear();
    assertThat(model.headProperty().get().title()).isEqualTo("Small lease");
    type("practice-margin", "2 psi");
    assertThat(lease().practice().margin().orElseThrow().toPsi()).isEqualTo(2);
    type("prices-contingency", "15");
    assertThat(lease().prices().contingency().orElseThrow().toPercent()).isEqualTo(15);
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
    assertThat(facts.get(0).text()).isEqualTo("14.5 psi, crest 126 ft out on Line 6");
    model.show(facts.get(0).working().get());
    assertThat(desk.shown.get(0).value()).isEqualTo(14.5);
  }

  @Test
  void thingsOfEveryKindAreKnownToTheSheet() {
    assertThat(lease().things().map(Thing::kind).distinct()).hasSize(7);
  }
}
