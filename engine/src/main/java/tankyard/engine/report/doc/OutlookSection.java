package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.outlook.RunOut;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;

/** What runs out next as the water grows, the first first. */
final class OutlookSection {
  private OutlookSection() {}

  static List<Section> of(Draft draft) {
    return draft.results().outlook().map(o -> List.of(section(draft, o))).orElse(List.of());
  }

  private static Section section(Draft draft, Outlook outlook) {
    List<Block.Column> columns =
        List.of(number("month"), text("working"), text("what runs out"), text("case"));
    List<List<String>> rows = new ArrayList<>();
    outlook.rows().forEach(row -> rows.add(row(draft, row)));
    String doubles =
        "With water that doubles in "
            + Figures.decimals(outlook.doubles().in(Unit.MONTH), 1)
            + " months and all else as today; oil does not grow. What lies more than "
            + Figures.exact(Outlook.HORIZON_MONTHS)
            + " months ahead is left out.";
    return rows.isEmpty()
        ? Section.of("What runs out next", new Block.Words(doubles + " Nothing runs out."))
        : Section.of(
            "What runs out next",
            new Block.Table("Months from today", columns, rows),
            new Block.Words(doubles));
  }

  private static List<String> row(Draft draft, RunOut row) {
    Draft.Shown month = draft.headline("Month: " + row.words(), Figure.MONTHS, row.after());
    return List.of(
        month.digits(),
        month.mark(),
        (row.already() ? "already: " : "") + row.words(),
        row.caseId().map(draft::nameOf).orElse("every case"));
  }
}
