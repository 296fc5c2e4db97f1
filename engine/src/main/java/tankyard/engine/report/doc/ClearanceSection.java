package tankyard.engine.report.doc;

import static tankyard.engine.report.doc.Block.Column.number;
import static tankyard.engine.report.doc.Block.Column.text;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.lease.Landmark;
import tankyard.engine.study.Clearance;
import tankyard.engine.study.Setback;

/** How far things stand from what they must keep away from. */
final class ClearanceSection {
  private ClearanceSection() {}

  static List<Section> of(Draft draft) {
    List<List<String>> rows =
        Clearance.of(draft.results().lease()).stream().map(c -> row(draft, c)).toList();
    List<Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "From shell to shell as drawn, a separator taken as round as it is long",
              List.of(
                  text("from"),
                  text("to the nearest"),
                  text("which is"),
                  number(draft.head("clear", Figure.DISTANCE))),
              rows));
    }
    List<Setback> setbacks = draft.results().yard().setbacks();
    if (!setbacks.isEmpty()) {
      blocks.add(
          new Block.Table(
              "From each landmark to the shell of the nearest tank or vessel",
              List.of(
                  text("from"),
                  text("which is"),
                  text("to the nearest"),
                  number(draft.head("clear", Figure.DISTANCE)),
                  number(draft.head("setback", Figure.DISTANCE))),
              setbacks.stream().map(s -> row(draft, s)).toList()));
    }
    if (blocks.isEmpty()) {
      return List.of();
    }
    blocks.add(
        new Block.Words(
            "How far each must stand, and from the road, a house, water and the property line"
                + " too, is for the local code, the fire marshal and the landowner to say."));
    return List.of(Section.of("Distances", blocks.toArray(Block[]::new)));
  }

  private static List<String> row(Draft draft, Setback setback) {
    Landmark landmark =
        (Landmark) draft.results().lease().thing(setback.landmarkId()).orElseThrow();
    return List.of(
        landmark.name(),
        landmark.what().words(),
        draft.nameOf(setback.to()),
        draft.digits(Figure.DISTANCE, setback.clear().value()),
        setback.needed().map(far -> draft.digits(Figure.DISTANCE, far)).orElse("not typed"));
  }

  private static List<String> row(Draft draft, Clearance clearance) {
    return List.of(
        draft.nameOf(clearance.from()),
        clearance.kind().words(),
        draft.nameOf(clearance.to()),
        draft.digits(Figure.DISTANCE, clearance.clear().value()));
  }
}
