package tankyard.app.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.LeaseStore;
import tankyard.app.edit.Rename;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallCures;
import tankyard.app.example.SmallLease;
import tankyard.app.solve.CureService;
import tankyard.engine.units.UnitSystem;

class CuresViewModelTest {
  private final Desk desk = new Desk();
  private final CuresViewModel model = new CuresViewModel(desk.selection, desk.view, desk.cures);

  @Test
  void nothingIsWorkedOutUntilSomebodyAsks() {
    assertThat(model.rows()).isEmpty();
    assertThat(model.wordsProperty().get()).contains("waits to be asked");
    assertThat(model.othersProperty().get()).isEmpty();
  }

  @Test
  void asksAndShowsTheBestFirst() {
    model.ask();

    assertThat(model.rows()).extracting(CureRow::change).startsWith("Line 6 in 3-in poly");
    assertThat(model.rows().get(0).gainedDigits()).isEqualTo("2.1");
    assertThat(model.rows().get(0).costDigits()).isEqualTo("1,240 USD");
    assertThat(model.rows().get(1).costDigits()).isEqualTo("in no bill");
    assertThat(model.othersProperty().get()).contains("transfer pump").contains("4720 ft");
    assertThat(model.othersProperty().get())
        .contains("Water tank filled from below asks for at least 11.2 psi half full")
        .contains("as it is drawn for 14.5 psi");
  }

  @Test
  void whereTheWayToTheTankSetsTheLeastNoLevelIsListed() {
    CureService service =
        new CureService(
            desk.store, (l, cancel) -> SmallCures.heldByTheCrest(), Runnable::run, Runnable::run);
    CuresViewModel held = new CuresViewModel(desk.selection, desk.view, service);
    held.ask();

    assertThat(held.othersProperty().get())
        .contains(
            "The level in Water tank does not count: the crest 126 ft out on Line 6 asks for 14.5"
                + " psi whatever stands in it.")
        .doesNotContain("filled from below");
  }

  @Test
  void followsTheUnits() {
    model.ask();
    desk.view.unitsProperty().set(UnitSystem.METRIC);

    assertThat(model.rows().get(0).mostDigits()).isEqualTo("179");
    assertThat(model.unit()).isEqualTo("kPa");
  }

  @Test
  void theNextEditForgetsIt() {
    model.ask();
    desk.store.edit(new Rename("W1", "Another name"));

    assertThat(model.rows()).isEmpty();
    assertThat(model.wordsProperty().get()).contains("waits to be asked");
  }

  @Test
  void anEditWhileItWorksCallsItOff() {
    LeaseStore store = new LeaseStore(SmallLease.lease());
    List<Runnable> later = new ArrayList<>();
    CureService service =
        new CureService(store, (l, cancel) -> SmallCures.books(), later::add, Runnable::run);
    service.ask();
    assertThat(service.stateProperty().get()).isEqualTo(CureService.State.WORKING);
    store.edit(new Rename("W1", "Another name"));
    later.forEach(Runnable::run);

    assertThat(service.booksProperty().get()).isEmpty();
    assertThat(service.stateProperty().get()).isEqualTo(CureService.State.NOT_ASKED);
  }

  @Test
  void aFailureIsSaid() {
    LeaseStore store = new LeaseStore(SmallLease.lease());
    CureService service =
        new CureService(
            store,
            (l, cancel) -> {
              throw new IllegalStateException("no way");
            },
            Runnable::run,
            Runnable::run);
    CuresViewModel failing = new CuresViewModel(desk.selection, desk.view, service);
    failing.ask();

    assertThat(failing.wordsProperty().get()).contains("could not be worked out: no way");
  }
}
