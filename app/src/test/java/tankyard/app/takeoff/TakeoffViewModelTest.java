package tankyard.app.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tankyard.app.example.Desk;
import tankyard.app.example.NoAnswer;
import tankyard.app.example.SmallLease;
import tankyard.engine.pricing.BillLine.State;

class TakeoffViewModelTest {
  private final Desk desk = new Desk();
  private final List<String> clipboard = new ArrayList<>();
  private final List<String> files = new ArrayList<>();
  private final TakeoffViewModel model = model(desk);

  private TakeoffViewModel model(Desk on) {
    return new TakeoffViewModel(
        on.selection,
        on.solve,
        on.shown::add,
        clipboard::add,
        (name, text) -> files.add(name + "\n" + text));
  }

  private BillRow row(State state) {
    return model.rows().stream().filter(r -> r.state() == state).findFirst().orElseThrow();
  }

  @Test
  void namesWhatCausedALine() {
    assertThat(model.rows().get(0).forWhat()).isEqualTo("Line 1, Line 2, Line 3 and 1 more");
    assertThat(model.rows().get(5).forWhat()).isEqualTo("the lease");
  }

  @Test
  void aMissingPriceIsNeverNothing() {
    assertThat(row(State.MISSING).price()).isEqualTo("no price");
    assertThat(row(State.MISSING).total()).isEmpty();
  }

  @Test
  void saysOfAPriceThatItIsOldOrMadeUp() {
    assertThat(model.rows().get(1).remark()).isEqualTo("old price, Plains Supply, 2025-06-02");
    assertThat(model.rows().get(1).stale()).isTrue();
    assertThat(model.rows().get(0).remark()).startsWith("made-up price");
  }

  @Test
  void saysWhatAThingThatIsThereWouldCost() {
    assertThat(row(State.HAVE).price()).isEqualTo("have it");
    assertThat(row(State.HAVE).remark()).isEqualTo("worth 4,100.00");
  }

  @Test
  void theSumsEndInTheTotal() {
    List<SumRow> sums = model.sumsProperty().get();
    assertThat(sums.get(2)).isEqualTo(new SumRow("Contingency, 15 %", "3,154.50", false));
    assertThat(sums.get(4)).isEqualTo(new SumRow("Total, USD", "25,002.30", true));
  }

  @Test
  void saysWhatTheTotalIsWithout() {
    assertThat(model.warningsProperty().get())
        .contains(
            "The total is without 1 line that nobody priced.",
            "Quote Q7 is not used: it covers nothing that is drawn.",
            "Priced on 2026-11-25.");
  }

  @Test
  void theTotalLeadsToItsWorking() {
    model.showTotalWorking();
    assertThat(desk.shown.get(0).value()).isEqualTo(25002.30);
  }

  @Test
  void aLinePicksAllThatCausedIt() {
    model.pick(model.rows().get(1));
    assertThat(desk.selection.ids()).containsExactly("OT1", "WT1");
    model.pick(model.rows().get(2));
    assertThat(desk.selection.revealProperty().get().id()).isEqualTo("L6");
  }

  @Test
  void copiesLinesAndSumsForASpreadsheet() {
    model.copy();
    assertThat(clipboard.get(0).lines().toList().get(3))
        .isEqualTo("Strainer 2 in\tLine 6\t1\teach\tno price\t\tnew\t");
    assertThat(clipboard.get(0)).endsWith("Total, USD\t\t\t\t\t25,002.30\n");
  }

  @Test
  void savesTheEnginesOwnCsv() {
    model.exportCsv();
    assertThat(files.get(0)).startsWith("bill.csv\ntext,kind,item").contains("Strainer 2 in");
  }

  @Test
  void saysWhatToDoWhileThereIsNothingToBuy() {
    Desk bare = new Desk(SmallLease.bare(), NoAnswer::of);
    assertThat(model(bare).emptyWordsProperty().get()).startsWith("Draw things");
  }
}
