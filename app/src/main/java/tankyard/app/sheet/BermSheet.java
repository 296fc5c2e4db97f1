package tankyard.app.sheet;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import tankyard.app.edit.Blanks;
import tankyard.app.edit.Place;
import tankyard.app.edit.ThingKind;
import tankyard.app.field.Fields;
import tankyard.engine.lease.Berm;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.MapPoint;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Unit;

/** The fields of a bermed pad, and the button that draws one. */
final class BermSheet {
  /** Room to walk between the outermost tank and the wall, ft. */
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
            "A rectangle round all tanks, with room to walk; drag its corners after",
            lease -> new Place(around(lease))));
  }

  private static Berm around(Lease lease) {
    List<Tank> tanks = lease.tanks();
    Berm blank = (Berm) new Blanks("").thing(lease, ThingKind.BERM, MapPoint.ofFeet(0, 0));
    if (tanks.isEmpty()) {
      return blank;
    }
    DoubleSummaryStatistics east = range(tanks, t -> t.at().east().toFeet());
    DoubleSummaryStatistics north = range(tanks, t -> t.at().north().toFeet());
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

  /** From the outer edge of the first tank's walkway to that of the last. */
  private static DoubleSummaryStatistics range(List<Tank> tanks, ToDoubleFunction<Tank> place) {
    return tanks.stream()
        .flatMap(
            t -> {
              double reach = t.diameter().toFeet() / 2 + WALKWAY_FT;
              double at = place.applyAsDouble(t);
              return List.of(at - reach, at + reach).stream();
            })
        .collect(Collectors.summarizingDouble(x -> x));
  }
}
