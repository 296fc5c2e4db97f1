package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SuctionResult;

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
}
