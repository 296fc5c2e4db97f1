package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.OverflowResult;
import tankyard.engine.units.Rounding;

/** What each overflow passes against all the fluid that comes when the dump valve sticks. */
final class OverflowSection {
  private OverflowSection() {}

  static List<Section> of(Draft draft) {
    List<List<String>> rows = new ArrayList<>();
    for (CaseResult designCase : draft.results().cases()) {
      designCase.overflows().forEach(o -> rows.add(row(draft, designCase, o)));
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Block.Column> columns =
        List.of(
            text("overflow"),
            text("into"),
            text("case"),
            number(draft.head("passes", Figure.RATE)),
            number(draft.head("all fluid", Figure.RATE)),
            number(draft.head("falls", Figure.SMALL)),
            number(draft.head("must fall", Figure.SMALL)),
            text("is it enough"),
            number(draft.head("catches", Figure.HOURS)),
            text("working"));
    return List.of(
        Section.of(
            "Overflows",
            new Block.Table("", columns, rows),
            new Block.Words(
                "Catches: how long the tank it leads to has room for all the fluid, a water tank from"
                    + " pump-on, an oil tank from its sales outlet.")));
  }

  private static List<String> row(Draft draft, CaseResult designCase, OverflowResult result) {
    String name = draft.nameOf(result.lineId());
    Draft.Shown passes =
        draft.headline(
            name + ", " + designCase.designCase().name() + ": passes",
            Figure.RATE,
            Rounding.DOWN,
            result.capacity());
    Optional<Draft.Shown> least =
        result
            .leastFall()
            .map(
                l ->
                    draft.headline(
                        name + ", " + designCase.designCase().name() + ": must fall",
                        Figure.SMALL,
                        Rounding.UP,
                        l));
    Optional<Draft.Shown> catches =
        result
            .catches()
            .map(
                time ->
                    draft.headline(
                        name + ", " + designCase.designCase().name() + ": catches",
                        Figure.HOURS,
                        Rounding.DOWN,
                        time));
    boolean enough =
        result.capacity().value().toBarrelsPerDay() >= result.allFluid().toBarrelsPerDay();
    return List.of(
        name,
        draft.results().lease().line(result.lineId()).map(l -> draft.nameOf(l.to())).orElse(""),
        designCase.designCase().name(),
        passes.digits(),
        draft.digits(Figure.RATE, result.allFluid()),
        result.fall().map(f -> draft.digits(Figure.SMALL, f)).orElse("not known"),
        least.map(Draft.Shown::digits).orElse("-"),
        enough ? enough(result) : "too small: the rest spills",
        catches.map(Draft.Shown::digits).orElse("-"),
        passes.mark());
  }

  /** What is passed without a fall that is known is what the pipe swallows at its mouth. */
  private static String enough(OverflowResult result) {
    return result.fall().isPresent() ? "yes" : "only if it falls that much";
  }
}
