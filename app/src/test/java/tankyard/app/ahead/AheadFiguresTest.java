package tankyard.app.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tankyard.app.example.Desk;
import tankyard.app.example.SmallAnswer;
import tankyard.app.example.SmallLease;
import tankyard.app.figures.CaseTableModel;
import tankyard.app.figures.FigureRow;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Lease;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.outlook.RunOut;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

class AheadFiguresTest {
  private static Computed<Time> month(double months) {
    return Computed.of(
        Time.of(months, Unit.MONTH),
        () ->
            Working.of(
                "Months until then",
                "t",
                "m",
                Unit.MONTH,
                Source.definition("a test"),
                Term.of("m", "as put in", months, Unit.MONTH)));
  }

  private static LeaseAnswer growing(Lease lease) {
    LeaseAnswer small = SmallAnswer.of(lease);
    String caseId = small.cases().get(0).designCase().id();
    List<RunOut> rows =
        List.of(
            new RunOut(
                RunOut.Kind.WATER_HOURS, "", Optional.empty(), "The tanks are short", month(0)),
            new RunOut(
                RunOut.Kind.OVERFLOW, "OV", Optional.of(caseId), "It runs over", month(8.72)));
    return new LeaseAnswer(
        small.lease(),
        small.cases(),
        small.windows(),
        small.yard(),
        small.choices(),
        Optional.of(new Outlook(Time.of(2, Unit.MONTH), rows)),
        small.findings(),
        small.bill(),
        small.diagnoses(),
        small.assumptions());
  }

  private final Desk desk = new Desk(SmallLease.lease(), AheadFiguresTest::growing);
  private final CaseTableModel model =
      AheadPanel.model(desk.selection, desk.view, desk.solve, desk.shown::add);

  private FigureRow row(int index) {
    return model.tableProperty().get().sets().get(0).rows().get(index);
  }

  @Test
  void theFirstToRunOutStandsFirstAndWhatIsGoneSaysNow() {
    assertThat(row(0).label()).isEqualTo("The tanks are short");
    assertThat(row(0).figures().get(0).text()).isEqualTo("now");
    assertThat(row(0).figures().get(1).text()).isEqualTo("every case");
    assertThat(row(1).figures().get(0).text()).isEqualTo("8.7");
  }

  @Test
  void theCaseInWhichItComesFirstIsNamed() {
    String name = desk.solve.latest().orElseThrow().answer().cases().get(0).designCase().name();
    assertThat(row(1).figures().get(1).text()).isEqualTo(name);
  }

  @Test
  void aMonthLeadsToItsWorking() {
    model.show(row(1).figures().get(0).working().orElseThrow().get());
    assertThat(desk.shown.get(0).title()).isEqualTo("Months until then");
  }

  @Test
  void saysWhereToTypeTheGrowthWhileThereIsNone() {
    Desk still = new Desk(SmallLease.lease(), SmallAnswer::of);
    CaseTableModel empty =
        AheadPanel.model(still.selection, still.view, still.solve, still.shown::add);
    assertThat(empty.emptyWordsProperty().get()).contains("in what time the water doubles");
  }
}
