package tankyard.app.sheet;

import java.util.List;
import tankyard.app.edit.NextCorner;
import tankyard.app.edit.RemoveCorner;
import tankyard.app.field.Part;
import tankyard.app.field.RowsBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Outlined;

/** The corners of what is drawn on the ground, each with its place. */
final class CornerRows {
  private CornerRows() {}

  static void fill(SheetForm sheet, Outlined outline) {
    RowsBuilder<Lease> rows = sheet.form.rows("corner", "Corners, in order", "", "East", "North");
    String id = outline.id();
    Part<Lease, List<MapPoint>> corners =
        new Part<>(
            lease -> outlined(lease, id).corners(),
            (lease, changed) -> lease.with(outlined(lease, id).withOutline(changed)));
    for (int i = 0; i < outline.corners().size(); i++) {
      int index = i;
      boolean spare = outline.corners().size() > outline.fewestCorners();
      rows.row(
          (i + 1) + ".",
          corners.then(Part.item(i)),
          MapPoint.class,
          fields -> {
            fields.amount("east", "East", "Of the datum; dragging it on the map does the same.");
            fields.amount("north", "North", "Of the datum; dragging it on the map does the same.");
          },
          spare ? sheet.does(lease -> new RemoveCorner(id, index)) : null);
    }
    rows.add(
            "Add a corner",
            "After the last; on the map a double click on a side puts one there",
            sheet.does(lease -> NextCorner.last(lease, id)))
        .end();
  }

  private static Outlined outlined(Lease lease, String id) {
    return (Outlined) lease.thing(id).orElseThrow();
  }
}
