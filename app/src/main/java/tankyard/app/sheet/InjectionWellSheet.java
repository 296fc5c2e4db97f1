package tankyard.app.sheet;

import tankyard.app.field.Fields;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Lease;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Unit;

/** The fields of an injection well. */
final class InjectionWellSheet {
  private InjectionWellSheet() {}

  static void fill(SheetForm sheet, String id) {
    sheet.form.section("");
    Fields<Lease, InjectionWell> well = sheet.thing("injection-well", id, InjectionWell.class);
    well.amount(
        "wellheadHeight", "Wellhead above its ground", "Its height counts as the line's end.");
    sheet.form.section("Takes water");
    well.amount(
        "pressureAtNoFlow", "Pressure with no flow", "What it holds when the pump stands still.");
    well.amount(
        "resistance",
        "Rises by",
        "How much the wellhead's pressure rises with the rate while pumping.");
    sheet.form.section("Permit");
    well.amount("permitPressure", "Most pressure", "At the wellhead, as the permit says.")
        .assumedFrom(lease -> "the screening form, if the depth is known");
    well.amount("permitRate", "Most in a day", "As the permit says.")
        .assumedFrom(lease -> "not checked");
    well.amount("depth", "Depth of the zone", "To the top of the injection zone.")
        .assumedFrom(lease -> "not known");
    sheet.form.section("Shared with another lease");
    well.amount("otherRate", "Its pump puts in", "While it runs: both rates make the pressure.")
        .assumedFrom(lease -> "not shared");
    well.amount("otherHours", "Its pump runs", "Hours a day; it may meet yours.")
        .unit(Unit.HOUR, Unit.HOUR)
        .assumed(Assumed.of(Defaults.OTHER_HOURS));
    sheet.place("injection-well", id);
    sheet.ground(well, id);
  }
}
