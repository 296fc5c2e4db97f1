package tankyard.app.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.edit.SetStatus;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Status;
import tankyard.engine.study.Diagnosis;

class FindingsViewModelTest {
  private final Desk desk = new Desk();

  private static FindingsViewModel model(Desk desk) {
    return new FindingsViewModel(desk.selection, desk.solve, desk.shown::add);
  }

  private static Desk deskWith(List<Diagnosis> diagnoses, boolean findings) {
    return new Desk(SmallLease.lease(), lease -> answer(lease, diagnoses, findings));
  }

  private static LeaseAnswer answer(Lease lease, List<Diagnosis> diagnoses, boolean findings) {
    LeaseAnswer whole = SmallAnswer.of(lease);
    return new LeaseAnswer(
        lease,
        whole.cases(),
        whole.windows(),
        whole.yard(),
        whole.choices(),
        whole.outlook(),
        findings ? whole.findings() : List.of(),
        whole.bill(),
        diagnoses,
        whole.assumptions());
  }

  @Test
  void theWorstStandsFirst() {
    assertThat(model(desk).shown().stream().map(FindingRow::severity))
        .containsExactly(Severity.STOP, Severity.FIX, Severity.LOOK, Severity.LOOK, Severity.NOTE);
  }

  @Test
  void namesTheThingAndTheCase() {
    FindingRow fix = model(desk).shown().get(1);
    assertThat(fix.thing()).isEqualTo("Oil tank 1");
    assertThat(fix.caseName()).isEqualTo("Today, winter");
  }

  @Test
  void countsEachSeverityWhetherListedOrNot() {
    FindingsViewModel model = model(desk);
    model.wantedProperty(Severity.LOOK).set(false);
    assertThat(model.countProperty(Severity.LOOK).get()).isEqualTo(2);
    assertThat(model.shown()).hasSize(3);
  }

  @Test
  void pickingAFindingShowsItsThingOnTheMap() {
    FindingsViewModel model = model(desk);
    model.pickedProperty().set(model.shown().get(2));
    assertThat(desk.selection.single()).contains("W3");
    assertThat(desk.selection.revealProperty().get().id()).isEqualTo("W3");
  }

  @Test
  void theSameFindingStaysPickedWhenTheLeaseIsWorkedOutAnew() {
    FindingsViewModel model = model(desk);
    model.pickedProperty().set(model.shown().get(2));
    long wishes = desk.selection.revealProperty().get().number();
    desk.store.edit(SetStatus.of(List.of("T1"), Status.HAVE));
    assertThat(model.pickedProperty().get().thingId()).isEqualTo("W3");
    assertThat(desk.selection.revealProperty().get().number()).isEqualTo(wishes);
  }

  @Test
  void whatCouldNotBeWorkedOutIsAStop() {
    FindingsViewModel model =
        model(deskWith(List.of(new Diagnosis("no-way", "T1", "Tee 1 has no way on.")), false));
    assertThat(model.shown()).hasSize(1);
    assertThat(model.shown().get(0).severity()).isEqualTo(Severity.STOP);
    assertThat(model.shown().get(0).thing()).isEqualTo("Tee 1");
  }

  @Test
  void theSameSentenceIsSaidOnce() {
    Diagnosis same = new Diagnosis("no-way-out", "W2", "Well 2 has no way to a separator.");
    assertThat(model(deskWith(List.of(same), true)).shown()).hasSize(5);
  }

  @Test
  void anEmptyListClaimsNoMoreThanWasChecked() {
    FindingsViewModel model = model(deskWith(List.of(), false));
    assertThat(model.emptyWordsProperty().get()).contains("what was checked");
  }

  @Test
  void saysWhenTheFilterHidesAll() {
    FindingsViewModel model = model(desk);
    for (Severity severity : Severity.values()) {
      model.wantedProperty(severity).set(false);
    }
    assertThat(model.emptyWordsProperty().get()).contains("hidden");
  }
}
