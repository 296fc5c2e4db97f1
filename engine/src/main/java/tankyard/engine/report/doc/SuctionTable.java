package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SuctionResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.working.Computed;

/** What drives the water into the pumps with their tanks drawn down. */
final class SuctionTable {
  private SuctionTable() {}

  static Optional<Block> of(Draft draft) {
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      designCase.suctions().forEach(s -> rows.add(row(draft, designCase, s)));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Block.Table("Suction, the tank at pump-off", columns(draft), rows));
  }

  private static List<Block.Column> columns(Draft draft) {
    return List.of(
        text("tank to pump"),
        text("case"),
        number(draft.head("water over it", Figure.HEIGHT)),
        number(draft.head("friction", Figure.HEIGHT)),
        number(draft.head("acceleration", Figure.HEIGHT)),
        text("working"),
        number(draft.head("left", Figure.HEIGHT)),
        text("working"),
        number(draft.head("needed", Figure.HEIGHT)));
  }

  private static List<String> row(Draft draft, CaseResult designCase, SuctionResult suction) {
    String what = draft.nameOf(suction.pumpId()) + ", " + designCase.designCase().name() + ": ";
    Draft.Shown acceleration =
        draft.headline(what + "acceleration head", Figure.HEIGHT, suction.acceleration());
    Draft.Shown left =
        draft.headline(what + "suction head left", Figure.HEIGHT, suction.available());
    return List.of(
        draft.nameOf(suction.tankId()) + " to " + draft.nameOf(suction.pumpId()),
        designCase.designCase().name(),
        draft.digits(Figure.HEIGHT, suction.level()),
        draft.digits(Figure.HEIGHT, suction.friction()),
        acceleration.digits(),
        acceleration.mark(),
        left.digits(),
        left.mark(),
        suction.needed().map(n -> draft.digits(Figure.HEIGHT, n)).orElse("not known"));
  }

  /** How far the tanks may be drawn down, where the maker's need is known. */
  static Optional<Block> lowest(Draft draft) {
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      for (SuctionResult suction : designCase.suctions()) {
        suction.lowest().ifPresent(l -> rows.add(lowest(draft, designCase, suction, l)));
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Table(
                "Lowest the water may stand over the suction, with 3 ft to spare",
                List.of(
                    text("tank to pump"),
                    text("case"),
                    number(draft.head("lowest", Figure.HEIGHT)),
                    text("working"),
                    number(draft.head("at pump-off", Figure.HEIGHT))),
                rows));
  }

  private static List<String> lowest(
      Draft draft, CaseResult designCase, SuctionResult suction, Computed<Length> lowest) {
    String pair = draft.nameOf(suction.tankId()) + " to " + draft.nameOf(suction.pumpId());
    Draft.Shown shown =
        draft.headline(
            pair + ", " + designCase.designCase().name() + ": lowest water over the suction",
            Figure.HEIGHT,
            Rounding.UP,
            lowest);
    return List.of(
        pair,
        designCase.designCase().name(),
        shown.digits(),
        shown.mark(),
        draft.digits(Figure.HEIGHT, suction.level()));
  }
}
