package tankyard.app.sheet;

import java.util.List;
import java.util.Optional;
import tankyard.app.edit.AddCorner;
import tankyard.app.edit.RemoveCorner;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.app.field.RowsBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Service;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** The fields of a line; its fittings have a class of their own. */
final class LineSheet {
  private LineSheet() {}

  static void fill(SheetForm sheet, Line line, UnitSystem units) {
    sheet.form.section("");
    Fields<Lease, Line> fields = sheet.form.on("line", LeasePlaces.line(line.id()), Line.class);
    fields
        .text("name", "Name", "What the crew calls it; it stands on the map and in every list.")
        .required()
        .wide();
    fields.oneOf(
        Service.class,
        "service",
        "Carries",
        "Decides what flows in it, which limits hold, and how it is fitted out.",
        Service::words);
    fields
        .choice(
            "pipe",
            "Pipe",
            "Bore and roughness make the loss; the material says what it stands.",
            lease -> PipeChoices.pipes(sheet, lease),
            id -> PipeChoices.words(sheet, id))
        .wide();
    sheet.status(fields);
    sheet.form.section("Length and depth");
    fields
        .amount("length", "Length of pipe", "If it was measured; else it is taken off the map.")
        .assumedFrom(lease -> LineLengths.offTheMap(lease, line.id(), units));
    fields
        .amount("slack", "Added for wander", "A trench is longer than the map: turns and slopes.")
        .unit(Unit.PERCENT, Unit.PERCENT)
        .assumed("0 %");
    fields
        .amount("depth", "Buried", "Deeper at a crest is less to push over; below frost it keeps.")
        .assumedFrom(Assumed::depth);
    if (line.service() == Service.OVERFLOW) {
      fields
          .amount("fall", "Falls", "From end to end: a level overflow passes little and freezes.")
          .unit(Unit.INCH, Unit.MILLIMETRE)
          .assumed("from lip to lip");
    }
    FittingRows.fill(sheet, fields, line);
    pegs(sheet, line, units);
  }

  private static void pegs(SheetForm sheet, Line line, UnitSystem units) {
    RowsBuilder<Lease> rows =
        sheet.form.rows("line-peg", "Pegs and corners", "At", "Ground", "Buried");
    Part<Lease, List<RoutePoint>> route =
        LeasePlaces.line(line.id()).then(Part.of(Line.class, "route"));
    for (int i = 0; i < line.route().size(); i++) {
      int peg = i;
      rows.row(
          LineLengths.pegName(line, i, sheet.lease(), units),
          route.then(Part.item(i)),
          RoutePoint.class,
          fields -> peg(sheet, fields),
          sheet.does(lease -> new RemoveCorner(line.id(), peg)));
    }
    rows.whenEmpty("A straight line. A hill between its ends needs a peg with its height.")
        .add(
            "Add a peg",
            "Puts a peg in the middle of the longest stretch; drag it on the map",
            sheet.does(lease -> newPeg(lease, line.id())))
        .end();
  }

  private static void peg(SheetForm sheet, Fields<Lease, RoutePoint> fields) {
    fields
        .amount("ground", "Ground", "Every foot of a hill is about half a psi on the gauge.")
        .assumedFrom(lease -> "off the map");
    fields
        .amount("depth", "Buried", "Where it differs from the line's own depth.")
        .assumedFrom(lease -> "as the line");
  }

  private static AddCorner newPeg(Lease lease, String lineId) {
    Line line = lease.line(lineId).orElseThrow();
    LineLengths.Stretch stretch = LineLengths.longest(lease, line);
    return new AddCorner(lineId, stretch.index(), stretch.middle(), Optional.empty());
  }
}
