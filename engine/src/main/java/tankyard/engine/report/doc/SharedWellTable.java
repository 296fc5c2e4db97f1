package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SharedWell;
import tankyard.engine.units.Rounding;

/** Injection wells that another lease pumps into as well. */
final class SharedWellTable {
  private SharedWellTable() {}

  static Optional<Block> of(Draft draft) {
    List<List<String>> rows =
        draft.results().cases().stream().flatMap(c -> rows(draft, c)).toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Block.Table(
            "Shared with another lease: one meter each, and the permit must name both",
            List.of(
                text("well"),
                text("case"),
                number(draft.head("both pump", Figure.HIGH)),
                text("working"),
                number(draft.head("limit", Figure.HIGH)),
                number("must meet, h"),
                number("by chance, h"),
                number(draft.head("over the day", Figure.RATE)),
                text("working")),
            rows));
  }

  private static Stream<List<String>> rows(Draft draft, CaseResult result) {
    return result.sharedWells().stream().map(well -> row(draft, result, well));
  }

  private static List<String> row(Draft draft, CaseResult result, SharedWell well) {
    String what = draft.nameOf(well.wellId()) + ", " + result.designCase().name() + ": ";
    Draft.Shown both =
        draft.headline(
            what + "wellhead while both leases pump", Figure.HIGH, Rounding.UP, well.bothOn());
    Draft.Shown day =
        draft.headline(what + "over the day, both leases", Figure.RATE, well.together());
    return List.of(
        draft.nameOf(well.wellId()),
        result.designCase().name(),
        both.digits(),
        both.mark(),
        well.limit().map(l -> draft.digits(Figure.HIGH, l.value())).orElse("not known"),
        draft.digits(Figure.HOURS, well.mustOverlap().value()),
        draft.digits(Figure.HOURS, well.byChance().value()),
        day.digits(),
        day.mark());
  }
}
