package tankyard.app.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Practice;
import tankyard.engine.lease.Prices;
import tankyard.engine.lease.Site;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Unit;

/** The lease's own fields, shown while nothing is picked. */
final class LeaseSheet {
  private static final List<Optional<Fluids.Tightness>> TIGHTNESS =
      Stream.concat(
              Stream.of(Optional.<Fluids.Tightness>empty()),
              Stream.of(Fluids.Tightness.values()).map(Optional::of))
          .toList();

  private LeaseSheet() {}

  static void fill(SheetForm sheet) {
    sheet.form.section("");
    Fields<Lease, Lease> lease = sheet.form.on("lease", LeasePlaces.whole(), Lease.class);
    lease.text("name", "Name", "Stands on every print.").required().wide();
    lease.text("note", "Note", "Whatever the next reader should know.").manyLines().wide();
    fluids(sheet);
    CaseSections.fill(sheet);
    practice(sheet);
    site(sheet);
    BermSheet.drawOne(sheet);
    OwnPipeSections.fill(sheet);
    prices(sheet);
  }

  private static void fluids(SheetForm sheet) {
    sheet.form.section("Fluids");
    Fields<Lease, Fluids> fluids =
        sheet.form.on("fluids", Part.of(Lease.class, "fluids"), Fluids.class);
    fluids
        .amount(
            "oil", "Oil", "Gravity at 60 °F; weight on every leg, and how thick it is when cold.")
        .unit(Unit.DEGREE_API, Unit.DEGREE_API);
    fluids
        .amount("brine", "Brine", "Gravity at 60 °F: each foot to lift weighs by it.")
        .unit(Unit.SPECIFIC_GRAVITY, Unit.SPECIFIC_GRAVITY);
    fluids
        .amount("pourPoint", "Pour point", "Below it a line that stood still may not start again.")
        .assumedFrom(l -> "not checked");
    fluids
        .amount(
            "gelStrength",
            "Gel strength",
            "Stress that starts cold oil again after it stood below its pour point.")
        .unit(Unit.PASCAL, Unit.PASCAL)
        .assumedFrom(l -> "not checked");
    fluids
        .amount(
            "inversion",
            "Water carries oil from",
            "Share of water above which the water carries the oil and the line runs thin.")
        .assumed(Assumed.of(Defaults.INVERSION));
    fluids.choice(
        "tightness",
        "Emulsion",
        "How tight: the smaller its drops of water, the thicker cold oil lines run.",
        lease -> TIGHTNESS,
        LeaseSheet::words);
    fluids
        .amount("gasGravity", "Gas over air", "By weight, where any well sends gas.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed(Assumed.of(Defaults.GAS_GRAVITY));
    ViscosityRows.fill(sheet);
  }

  private static String words(Optional<Fluids.Tightness> tightness) {
    return tightness.map(t -> t.name().toLowerCase(Locale.ROOT)).orElse("not said");
  }

  private static void practice(SheetForm sheet) {
    sheet.form.section("Practice");
    Fields<Lease, Practice> practice =
        sheet.form.on("practice", Part.of(Lease.class, "practice"), Practice.class);
    practice
        .amount("designWater", "Design water", "The leg's rate over the day's average.")
        .unit(Unit.ONE, Unit.ONE)
        .assumed(Assumed.of(Defaults.DESIGN_WATER));
    practice
        .amount("margin", "Margin on the least", "Kept above what must be reached.")
        .assumed(Assumed.of(Defaults.MARGIN));
    practice
        .amount("reliefShare", "Share of the relief", "The gauge stays below it.")
        .assumed(Assumed.of(Defaults.RELIEF_SHARE));
    practice
        .amount("depth", "Lines buried", "Where a line does not say otherwise.")
        .assumed(Assumed.of(Defaults.DEPTH));
    practice.amount("load", "A truck takes", "Ask the hauler.").assumed(Assumed.of(Defaults.LOAD));
    practice
        .amount(
            "truckDraws", "Its pump draws", "The vents of the oil tanks must let in as much air.")
        .unit(Unit.BARREL_PER_HOUR, Unit.CUBIC_METRE_PER_HOUR)
        .assumed(Assumed.of(Defaults.TRUCK_DRAWS));
    practice
        .amount("roadOut", "Road out for", "Oil tanks must hold a load and what comes then.")
        .unit(Unit.DAY_UNIT, Unit.DAY_UNIT)
        .assumed(Assumed.of(Defaults.ROAD_OUT));
    practice
        .amount("nightOut", "Nobody looks for", "Tanks must hold what comes then.")
        .assumed(Assumed.of(Defaults.NIGHT_OUT));
    practice
        .amount(
            "waterDoubles",
            "Water doubles in",
            "Where it grows: then what runs out next is worked out.")
        .unit(Unit.MONTH, Unit.MONTH)
        .assumedFrom(l -> "does not grow");
    practice
        .amount(
            "pumpShare",
            "Act when pumps run",
            "Of the day: what is left is for repairs and growth.")
        .assumed(Assumed.of(Defaults.PUMP_SHARE));
    practice
        .amount("heatLoss", "Lines lose", "Heat to the ground, on the outside of the pipe.")
        .assumed(Assumed.of(Defaults.HEAT_LOSS));
    practice
        .amount(
            "reaction", "Wells stop after", "From a high switch tripping until they stand still.")
        .assumed(Assumed.of(Defaults.REACTION));
    practice
        .amount(
            "atOnce",
            "Shared lines, of the time",
            "Wells run at times of their own; the rate taken is not passed for that share.")
        .assumed(Assumed.of(Defaults.AT_ONCE));
    practice
        .amount(
            "treatAt",
            "Heat the oil to",
            "If a heater-treater is thought of: a bottle test tells how warm.")
        .assumedFrom(l -> "no treater");
    practice
        .amount(
            "treaterWater",
            "Of the water, to it",
            "The rest is knocked out before; water takes most of the heat.")
        .assumed(Assumed.of(Defaults.TREATER_WATER));
    practice
        .amount("treaterEfficiency", "Treater gives on", "From burner to liquid.")
        .assumed(Assumed.of(Defaults.TREATER_EFFICIENCY));
  }

  private static void site(SheetForm sheet) {
    sheet.form.section("Site");
    Fields<Lease, Site> site = sheet.form.on("site", Part.of(Lease.class, "site"), Site.class);
    site.text("datum", "Heights are from", "The one mark all elevations are measured from.")
        .prompt("not said");
    site.amount("altitude", "Datum above sea level", "For the air pressure.")
        .assumedFrom(l -> "not known");
    site.amount("groundSummer", "Ground in summer", "At the depth of the lines.")
        .assumed(Assumed.of(Defaults.GROUND_SUMMER));
    site.amount("groundWinter", "Ground in winter", "Cold oil is thick: winter governs friction.")
        .assumed(Assumed.of(Defaults.GROUND_WINTER));
    site.amount(
            "heightAccuracy",
            "Heights are good to",
            "Plus or minus; 10 ft of GPS are 4.6 psi of brine on either end of the window.")
        .assumedFrom(l -> "not said: no band");
  }

  private static void prices(SheetForm sheet) {
    sheet.form.section("Prices");
    Fields<Lease, Prices> prices =
        sheet.form.on("prices", Part.of(Lease.class, "prices"), Prices.class);
    prices
        .amount("contingency", "Contingency", "10 to 15 % on firm quotes, 25 % on guesses.")
        .assumed("0 %");
    prices.amount("tax", "Tax on goods", "Work is not taxed here.").assumed("0 %");
  }

  /** How much is drawn, in words. */
  static List<String> facts(Lease lease) {
    return List.of(
        count(lease.wells().size(), "well")
            + ", "
            + count(lease.lines().size(), "line")
            + ", "
            + count(lease.spotHeights().size(), "spot height")
            + ", "
            + count(lease.prices().quotes().size(), "quote")
            + ".");
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
