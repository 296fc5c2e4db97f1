package tankyard.app.sheet;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tankyard.app.edit.Blanks;
import tankyard.app.edit.Place;
import tankyard.app.edit.ThingKind;
import tankyard.app.field.Fields;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.Clearance;
import tankyard.engine.units.Unit;

/** The fields of a bermed pad, and the button that draws one. */
final class BermSheet {
  /** Room to walk between the outermost shell and the wall, ft. */
  private static final double WALKWAY_FT = 10;

  private BermSheet() {}

  static void fill(SheetForm sheet, Berm berm) {
    sheet.form.section("");
    Fields<Lease, Berm> fields = sheet.thing("berm", berm.id(), Berm.class);
    fields
        .amount("height", "Height", "As it stands or is settled; held against what is needed.")
        .assumedFrom(lease -> "as needed");
    fields
        .amount("rain", "Rain to hold", "The storm your rule names; a local matter.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumed("0 in");
    fields.amount("freeboard", "Freeboard", "Added on top.").assumed("0 ft");
    fields
        .amount(
            "largestTankFactor",
            "Times the largest tank",
            "1 by the federal rule; some states want 1.5. Local rules decide.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed("1");
    CornerRows.fill(sheet, berm);
  }

  /** On the sheet of the lease. */
  static void drawOne(SheetForm sheet) {
    sheet.form.section("Berm");
    sheet.form.action(
        sheet.button(
            "berm-add",
            "Draw one round the tanks",
            "A rectangle round tanks and vessels, with room to walk; drag its corners after",
            lease -> new Place(around(lease))));
  }

  private static Berm around(Lease lease) {
    List<Thing> battery =
        Stream.<Thing>concat(lease.tanks().stream(), lease.vessels())
            .filter(thing -> thing.status().stays())
            .toList();
    Berm blank = (Berm) new Blanks("").thing(lease, ThingKind.BERM, MapPoint.ofFeet(0, 0));
    if (battery.isEmpty()) {
      return blank;
    }
    DoubleSummaryStatistics east = range(battery, t -> t.at().east().toFeet());
    DoubleSummaryStatistics north = range(battery, t -> t.at().north().toFeet());
    double west = Math.floor(east.getMin());
    double south = Math.floor(north.getMin());
    double right = Math.ceil(east.getMax());
    double top = Math.ceil(north.getMax());
    return blank.withOutline(
        List.of(
            MapPoint.ofFeet(west, south),
            MapPoint.ofFeet(right, south),
            MapPoint.ofFeet(right, top),
            MapPoint.ofFeet(west, top)));
  }

  /** From the outer edge of the first one's walkway to that of the last. */
  private static DoubleSummaryStatistics range(List<Thing> battery, ToDoubleFunction<Thing> place) {
    return battery.stream()
        .flatMap(
            thing -> {
              double reach = Clearance.half(thing).toFeet() + WALKWAY_FT;
              double at = place.applyAsDouble(thing);
              return Stream.of(at - reach, at + reach);
            })
        .collect(Collectors.summarizingDouble(x -> x));
  }
}
