package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tankyard.engine.pricing.BillLine;
import tankyard.engine.units.Figures;
import tankyard.engine.units.UnitSystem;

/** The bill by itself, every line of it with what caused it. */
public final class BillReport {
  private final Draft draft;

  private BillReport(Draft draft) {
    this.draft = draft;
  }

  public static Report of(Results results) {
    Draft draft = new Draft(results, UnitSystem.FIELD);
    List<Section> sections = new ArrayList<>();
    sections.add(Section.of("Bill", new BillReport(draft).lines()));
    sections.addAll(BillSection.of(draft));
    return draft.finish(LeaseReport.STANDING, sections);
  }

  private Block lines() {
    List<Block.Column> columns =
        List.of(
            text("what"),
            number("quantity"),
            text("unit"),
            number("price"),
            number(draft.results().bill().totals().currency()),
            text("for"),
            text("remark"));
    return new Block.Table(
        "", columns, draft.results().bill().lines().stream().map(this::row).toList());
  }

  private List<String> row(BillLine line) {
    return List.of(
        line.text(),
        Figures.decimals(line.quantity(), 2),
        line.unit().words(),
        line.unitPrice().map(Amounts::digits).orElse("-"),
        line.total().map(Amounts::digits).orElse(line.state().words()),
        line.causes().stream().map(draft::nameOf).collect(Collectors.joining(", ")),
        remark(line));
  }

  private static String remark(BillLine line) {
    List<String> words = new ArrayList<>();
    if (line.invented()) {
      words.add("invented price");
    }
    if (line.stale()) {
      words.add("price of " + line.date().map(Object::toString).orElse("long ago"));
    }
    if (!line.note().isEmpty()) {
      words.add(line.note());
    }
    return String.join("; ", words);
  }
}
