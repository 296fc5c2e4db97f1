package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tankyard.app.edit.Edit;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.app.field.RowsBuilder;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;

/** The fittings of a line beside what its ends need. */
final class FittingRows {
  private static final int MOST = 999;

  private FittingRows() {}

  static void fill(SheetForm sheet, Fields<Lease, Line> fields, Line line) {
    List<String> ids = fitting(sheet.catalog, line);
    RowsBuilder<Lease> rows =
        sheet.form.rows("line-fitting", "Fittings beside its ends", "", "Fitting", "How many");
    Part<Lease, List<FittingCount>> all =
        LeasePlaces.line(line.id()).then(Part.of(Line.class, "fittings"));
    for (int i = 0; i < line.fittings().size(); i++) {
      int index = i;
      rows.row(
          "",
          all.then(Part.item(i)),
          FittingCount.class,
          row -> {
            row.choice(
                "fitting",
                "Fitting",
                "Each adds its loss, and is on the bill.",
                lease -> ids,
                id -> sheet.catalog.item(id).map(CatalogItem::name).orElse(id));
            row.count("count", "How many", "Of this one on the line.", 1, MOST);
          },
          sheet.does(lease -> without(line.id(), index)));
    }
    rows.whenEmpty("None beside those its ends need.");
    if (!ids.isEmpty()) {
      rows.add(
          "Add a fitting",
          "An elbow, a valve or the like on the way",
          sheet.does(lease -> with(line.id(), ids.get(0))));
    }
    rows.end();
    sheet.form.section("");
    fields
        .amount(
            "fittingLength",
            "Or as pipe of",
            "Straight pipe that would lose as much, where the fittings are not counted one by one.")
        .assumedFrom(lease -> "counted above");
  }

  /** What has a loss and goes on a pipe of that size. */
  private static List<String> fitting(Catalog catalog, Line line) {
    Optional<NominalSize> size = catalog.pipe(line.pipe()).map(p -> p.nominal());
    List<String> ids = new ArrayList<>();
    catalog.list(Fitting.class).stream()
        .filter(f -> fits(f.nominal(), size))
        .forEach(f -> ids.add(f.id()));
    catalog.list(ValveType.class).stream()
        .filter(v -> v.loss().isPresent() && fits(v.nominal(), size))
        .forEach(v -> ids.add(v.id()));
    return ids;
  }

  private static boolean fits(Optional<NominalSize> item, Optional<NominalSize> pipe) {
    return item.isEmpty() || pipe.isEmpty() || item.equals(pipe);
  }

  private static Edit with(String lineId, String fitting) {
    return change("Add a fitting to ", lineId, list -> list.add(new FittingCount(fitting, 1)));
  }

  private static Edit without(String lineId, int index) {
    return change("Take a fitting off ", lineId, list -> list.remove(index));
  }

  private static Edit change(String step, String lineId, Consumer<List<FittingCount>> change) {
    return new NamedEdit(
        step,
        lineId,
        lease -> {
          Line line = lease.line(lineId).orElseThrow();
          List<FittingCount> fittings = new ArrayList<>(line.fittings());
          change.accept(fittings);
          return lease.with(Part.put(line, "fittings", List.copyOf(fittings)));
        });
  }
}
