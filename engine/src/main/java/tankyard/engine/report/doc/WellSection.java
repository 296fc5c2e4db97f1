package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Well;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.WellResult;
import tankyard.engine.units.Quantity;

/** The pressure at each stuffing box, case beside case. */
final class WellSection {
  private static final String NONE = "-";

  private final Draft draft;

  private WellSection(Draft draft) {
    this.draft = draft;
  }

  static List<Section> of(Draft draft) {
    WellSection section = new WellSection(draft);
    List<Well> wells =
        draft.results().lease().wells().stream().filter(w -> section.worst(w).isPresent()).toList();
    if (wells.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(section.tables(wells));
    blocks.add(
        new Block.Words(
            "A star marks a box above its limit. The last columns are of the case in which the box"
                + " has most: lift and line loss between box and gauge, and the working."));
    return List.of(new Section("Wells", blocks));
  }

  private List<Block> tables(List<Well> wells) {
    return new CaseTable<>(draft, wells)
        .before(text("well"), Well::name)
        .before(number(draft.head("oil", Figure.RATE)), w -> draft.digits(Figure.RATE, w.oil()))
        .before(number(draft.head("water", Figure.RATE)), w -> draft.digits(Figure.RATE, w.water()))
        .before(number(draft.head("limit", Figure.READING)), this::limit)
        .after(number("lift"), w -> part(worst(w).map(r -> r.lift())))
        .after(number("line loss"), w -> part(worst(w).map(r -> r.friction())))
        .after(number("working"), this::mark)
        .with(draft.head("Pressure at the stuffing box", Figure.READING), this::box);
  }

  private String limit(Well well) {
    return well.boxLimit().map(p -> draft.digits(Figure.READING, p)).orElse("not known");
  }

  private String part(Optional<? extends Quantity> quantity) {
    return quantity.map(q -> draft.digits(Figure.PART, q)).orElse(NONE);
  }

  private String box(Well well, CaseResult designCase) {
    return designCase
        .well(well.id())
        .map(r -> draft.digits(Figure.READING, r.box().value()) + (isOver(r) ? "*" : ""))
        .orElse(NONE);
  }

  private static boolean isOver(WellResult result) {
    return result.limit().filter(l -> result.box().value().pascals() > l.pascals()).isPresent();
  }

  private String mark(Well well) {
    return worst(well)
        .map(r -> draft.headline(well.name() + ": stuffing box", Figure.READING, r.box()).mark())
        .orElse(NONE);
  }

  /** The well in the case that loads its box most. */
  private Optional<WellResult> worst(Well well) {
    return draft.results().cases().stream()
        .flatMap(c -> c.well(well.id()).stream())
        .max(Comparator.comparingDouble(r -> r.box().value().pascals()));
  }
}
