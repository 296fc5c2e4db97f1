package tankyard.app.sheet;

import tankyard.app.field.Fields;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Well;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Unit;

/** The fields of a pumping well. */
final class WellSheet {
  private WellSheet() {}

  static void fill(SheetForm sheet, String id) {
    sheet.form.section("");
    Fields<Lease, Well> well = sheet.thing("well", id, Well.class);
    sheet.form.section("Makes in a day");
    well.amount("oil", "Oil", "From run tickets or a barrel test. Tanks and hauls follow it.");
    well.amount("water", "Water", "From a barrel test. Water leg, water tank and pump follow it.");
    well.amount(
        "gas",
        "Gas",
        "Much gas breaks the liquid-full vessel; without it the window is taken for liquid alone.");
    sheet.form.section("Runs");
    well.amount(
            "runsPerDay",
            "Hours a day",
            "The day's barrels come in the hours it runs: half the hours is twice the rate.")
        .assumed(Assumed.of(Defaults.RUNS_PER_DAY));
    well.amount(
            "surge",
            "Stroke peak",
            "Peak of the stroke over its mean: a line with this well alone feels it.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed(Assumed.of(Defaults.SURGE));
    sheet.form.section("Stuffing box");
    well.amount("boxHeight", "Above its ground", "Its height counts against the separator's.")
        .assumed("0 ft");
    well.amount(
            "boxLimit",
            "Most it stands",
            "What you trust the packing with: it may set the most the gauge may read.")
        .assumedFrom(lease -> "not checked");
    sheet.form.section("Cold");
    well.amount(
            "headTemperature",
            "Leaves at",
            "Warm oil is thin until the ground has cooled its line; lines are short of that.")
        .assumedFrom(lease -> "as the ground");
    well.amount(
            "returnedWater",
            "Water brought back",
            "Produced water put into its line so that water carries the oil; it passes the separator"
                + " twice.")
        .assumed("0 bbl/d");
    sheet.form.section("Power");
    well.amount("motor", "Motor", "Its nameplate; empty where it runs on gas.")
        .assumedFrom(lease -> "none");
    MotorFields.fill(sheet, well, "well", id, Well.class);
    sheet.place("well", id);
    sheet.ground(well, id);
  }
}
