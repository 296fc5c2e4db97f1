package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Line;
import tankyard.engine.study.SharedLine;
import tankyard.engine.units.Figures;

/** What lines several wells share carry: on the day's average, most of the time, with all on. */
final class SharedLineTable {
  private final Draft draft;

  private SharedLineTable(Draft draft) {
    this.draft = draft;
  }

  /** Empty where wells run all day: then the three rates are one. */
  static Optional<Block> of(Draft draft, List<Line> lines) {
    SharedLineTable table = new SharedLineTable(draft);
    List<List<String>> rows =
        lines.stream().flatMap(l -> table.hardest(l).map(s -> table.row(l, s)).stream()).toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Table("Lines several wells share: rate, and loss", table.columns(), rows));
  }

  static Optional<Block> words(Draft draft) {
    return draft.results().cases().stream()
        .flatMap(c -> c.shared().stream())
        .filter(SharedLineTable::differs)
        .findFirst()
        .map(
            s ->
                new Block.Words(
                    "\"At once\" is the rate not passed "
                        + percent(s.share().ratio())
                        + " of the time, worked out from the hours each well runs, wells starting"
                        + " and stopping at times of their own. After an outage all come on"
                        + " together. Losses are of the case in which the line loses most at"
                        + " once."
                        + broughtBack(draft)));
  }

  private static String broughtBack(Draft draft) {
    return draft.results().lease().wells().stream().noneMatch(w -> w.returnedWater().isPresent())
        ? ""
        : " Water brought back to the wells counts in all three rates, since it never rests; their"
            + " losses take the case's own share of water.";
  }

  private List<Block.Column> columns() {
    return List.of(
        text("line"),
        number("wells"),
        number(draft.head("average", Figure.RATE)),
        number(draft.head("at once", Figure.RATE)),
        text("working"),
        number(draft.head("all on", Figure.RATE)),
        number("all on, of the time"),
        number(draft.head("average", Figure.PART)),
        number(draft.head("at once", Figure.PART)),
        text("working"),
        number(draft.head("all on", Figure.PART)));
  }

  private Optional<SharedLine> hardest(Line line) {
    return draft.results().cases().stream()
        .flatMap(c -> c.shared(line.id()).stream())
        .filter(SharedLineTable::differs)
        .max(Comparator.comparingDouble(s -> s.atOnceLoss().value().pascals()));
  }

  private static boolean differs(SharedLine line) {
    return line.allOn().toBarrelsPerDay() > line.average().toBarrelsPerDay() * (1 + 1e-9);
  }

  private List<String> row(Line line, SharedLine shared) {
    Draft.Shown rate = draft.headline(line.name() + ": rate at once", Figure.RATE, shared.atOnce());
    Draft.Shown loss =
        draft.headline(line.name() + ": line loss at once", Figure.PART, shared.atOnceLoss());
    return List.of(
        line.name(),
        String.valueOf(shared.wellIds().size()),
        draft.digits(Figure.RATE, shared.average()),
        rate.digits(),
        rate.mark(),
        draft.digits(Figure.RATE, shared.allOn()),
        percent(shared.allOnShare().ratio()),
        draft.digits(Figure.PART, shared.averageLoss()),
        loss.digits(),
        loss.mark(),
        draft.digits(Figure.PART, shared.allOnLoss()));
  }

  /** Two figures are enough for a share of the time; far below a thousandth nobody can tell. */
  private static String percent(double ratio) {
    return ratio < 1e-4 ? "< 0.01 %" : Figures.significant(100 * ratio, 2) + " %";
  }
}
