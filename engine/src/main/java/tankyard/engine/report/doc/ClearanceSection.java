package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.List;
import tankyard.engine.study.Clearance;

/** How far things stand from what they must keep away from. */
final class ClearanceSection {
  private ClearanceSection() {}

  static List<Section> of(Draft draft) {
    List<List<String>> rows =
        Clearance.of(draft.results().lease()).stream().map(c -> row(draft, c)).toList();
    if (rows.isEmpty()) {
      return List.of();
    }
    return List.of(
        Section.of(
            "Distances",
            new Block.Table(
                "From shell to shell as drawn, a separator taken as round as it is long",
                List.of(
                    text("from"),
                    text("to the nearest"),
                    text("which is"),
                    number(draft.head("clear", Figure.DISTANCE))),
                rows),
            new Block.Words(
                "How far each must stand, and from the road, a house, water and the property line"
                    + " too, is for the local code, the fire marshal and the landowner to say.")));
  }

  private static List<String> row(Draft draft, Clearance clearance) {
    return List.of(
        draft.nameOf(clearance.from()),
        clearance.kind().words(),
        draft.nameOf(clearance.to()),
        draft.digits(Figure.DISTANCE, clearance.clear().value()));
  }
}
