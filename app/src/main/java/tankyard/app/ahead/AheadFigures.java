package tankyard.app.ahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.CaseTable;
import tankyard.app.figures.Figure;
import tankyard.app.figures.FigureColumn;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.outlook.RunOut;
import tankyard.engine.study.CaseResult;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/** Rows of what runs out: the month, and the case in which it comes first. */
final class AheadFigures {
  private static final List<FigureColumn> COLUMNS =
      List.of(new FigureColumn("Month", true), new FigureColumn("Case", false));

  private final CaseFigures figures;

  private AheadFigures(CaseFigures figures) {
    this.figures = figures;
  }

  static CaseTable of(CaseFigures figures) {
    return figures
        .answer()
        .outlook()
        .map(outlook -> new AheadFigures(figures).table(outlook))
        .orElse(CaseTable.empty());
  }

  private CaseTable table(Outlook outlook) {
    List<FigureRow> rows = new ArrayList<>();
    outlook.rows().forEach(row -> rows.add(row(row)));
    String doubles = Figures.decimals(outlook.doubles().in(Unit.MONTH), 1);
    String title =
        rows.isEmpty()
            ? "Nothing runs out within five years"
            : "What runs out next, the water doubling in " + doubles + " months";
    return new CaseTable(COLUMNS, List.of(new FigureSet(title, "", rows)));
  }

  private FigureRow row(RunOut row) {
    String month = row.already() ? "now" : Figures.decimals(row.after().value().in(Unit.MONTH), 1);
    String where = row.caseId().flatMap(this::caseName).orElse("every case");
    return new FigureRow(
        row.words(),
        "",
        "Months from today, with all but the water as it is.",
        List.of(new Figure(month, Optional.of(row.after()::working)), Figure.plain(where)));
  }

  private Optional<String> caseName(String id) {
    return figures.answer().cases().stream()
        .map(CaseResult::designCase)
        .filter(c -> c.id().equals(id))
        .map(DesignCase::name)
        .findFirst();
  }
}
