package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SwitchResult;
import tankyard.engine.units.Rounding;

/** Where each tank's high switch must sit, in the case that asks for the lowest place. */
final class SwitchSection {
  private SwitchSection() {}

  static List<Section> of(Draft draft) {
    List<List<String>> rows = new ArrayList<>();
    for (Tank tank : draft.results().lease().tanks()) {
      lowest(draft, tank).ifPresent(hardest -> rows.add(row(draft, tank, hardest)));
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Block.Column> columns =
        List.of(
            text("tank"),
            number(draft.head("sits at", Figure.HEIGHT)),
            number(draft.head("at most", Figure.HEIGHT)),
            text("case"),
            number(draft.head("comes", Figure.RATE)),
            text("working"),
            number("hours to the lip, should it fail"),
            text("working"));
    return List.of(
        Section.of(
            "High switches",
            new Block.Table("Heights above each tank's bottom", columns, rows),
            new Block.Words(
                "An oil tank must take all the fluid when the dump valve sticks, a water tank all"
                    + " the water when the injection pump is down. A switch that opens when its"
                    + " signal is lost, stops the wells and leaves the injection pump running.")));
  }

  private record Hardest(CaseResult in, SwitchResult high) {}

  private static Optional<Hardest> lowest(Draft draft, Tank tank) {
    return draft.results().cases().stream()
        .flatMap(
            c ->
                c.switches().stream()
                    .filter(s -> s.tankId().equals(tank.id()))
                    .map(s -> new Hardest(c, s)))
        .min(Comparator.comparingDouble(h -> h.high().highest().value().metres()));
  }

  private static List<String> row(Draft draft, Tank tank, Hardest hardest) {
    SwitchResult high = hardest.high();
    Draft.Shown most =
        draft.headline(
            tank.name() + ": high switch at most", Figure.HEIGHT, Rounding.DOWN, high.highest());
    Optional<Draft.Shown> fails =
        high.failsIn()
            .map(
                t ->
                    draft.headline(
                        tank.name() + ": from the high switch to the lip",
                        Figure.HOURS,
                        Rounding.DOWN,
                        t));
    return List.of(
        tank.name(),
        high.height().map(h -> draft.digits(Figure.HEIGHT, h)).orElse("none"),
        most.digits(),
        hardest.in().designCase().name(),
        draft.digits(Figure.RATE, high.rate()),
        most.mark(),
        fails.map(Draft.Shown::digits).orElse("-"),
        fails.map(Draft.Shown::mark).orElse(""));
  }
}
