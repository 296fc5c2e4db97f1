package tankyard.app.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import tankyard.app.field.AmountEntry;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Tank;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;

/** The fields of an oil tank or a water tank. */
final class TankSheet {
  private TankSheet() {}

  static void fill(SheetForm sheet, String id, Tank.Duty duty) {
    sheet.form.section("");
    Fields<Lease, Tank> tank = sheet.thing("tank", id, Tank.class);
    sheet.model(
        tank,
        "Size",
        "A catalogue size fills in diameter, shell and overflow; they can be changed after.",
        TankSize.class,
        size -> true,
        model(sheet.catalog));
    tank.amount("diameter", "Diameter", "Barrels a foot go with its square.");
    tank.amount("shellHeight", "Shell", "Height of the shell above the bottom.");
    sheet.form.section("Heights above its bottom");
    tank.amount(
        "overflowHeight",
        "Overflow lip",
        "The tank is full there: a low water inlet must push against it.");
    tank.amount(
        "inletHeight",
        "Inlet",
        "Over the top the water leg must reach it, however low the tank stands.");
    tank.oneOf(
        Tank.Entry.class,
        "entry",
        "Inlet enters",
        "At the bottom the level stands against the leg; without a check valve it drains back.",
        entry -> "at the " + entry.name().toLowerCase(Locale.ROOT));
    levels(tank, id, duty);
    vent(sheet, tank, id);
    sheet.place("tank", id);
    sheet.ground(tank, id);
  }

  private static void levels(Fields<Lease, Tank> tank, String id, Tank.Duty duty) {
    if (duty == Tank.Duty.OIL) {
      tank.amount("outletHeight", "Sales outlet", "What lies below it is bottoms and not sold.")
          .assumed(Assumed.of(Defaults.SALES_OUTLET));
      tank.amount("load", "A truck takes", "One load must be there before the truck comes.")
          .assumedFrom(Assumed::load);
    } else {
      tank.amount("pumpOn", "Pump starts", "Above it is the room for an outage.")
          .assumedFrom(lease -> Assumed.pumpOn(tank(lease, id)));
      tank.amount("pumpOff", "Pump stops", "Keep it above the nozzle, for the suction's sake.")
          .assumedFrom(lease -> "not known");
    }
    tank.amount(
            "switchHeight", "High switch", "Below the lip by what comes while somebody drives out.")
        .assumedFrom(lease -> Assumed.switchHeight(tank(lease, id)));
  }

  private static void vent(SheetForm sheet, Fields<Lease, Tank> tank, String id) {
    sheet.form.section("Vent");
    tank.amount(
            "ventBore", "Clear bore", "What air goes through, in when drawn and out when filled.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumedFrom(lease -> "not checked");
    ounces(
            tank,
            "ventLifts",
            "Opens for pressure",
            "Pressure at which it lifts; none for an open pipe.")
        .assumedFrom(lease -> "open");
    ounces(
            tank,
            "ventDraws",
            "Opens for vacuum",
            "Vacuum at which it lifts; none for an open pipe.")
        .assumedFrom(lease -> "open");
    ounces(tank, "roofPressure", "Roof rated for", "Most pressure under it; tanks hold ounces.")
        .assumedFrom(lease -> roof(sheet, lease, id, TankSize::pressure));
    ounces(tank, "roofVacuum", "Rated vacuum", "Most vacuum under the roof before it folds.")
        .assumedFrom(lease -> roof(sheet, lease, id, TankSize::vacuum));
  }

  private static AmountEntry<Lease> ounces(
      Fields<Lease, Tank> tank, String field, String label, String why) {
    return tank.amount(field, label, why).unit(Unit.OUNCE_PER_SQUARE_INCH, Unit.KILOPASCAL);
  }

  private static String roof(
      SheetForm sheet, Lease lease, String id, Function<TankSize, Optional<Pressure>> holds) {
    return tank(lease, id)
        .model()
        .flatMap(model -> sheet.catalog.item(model, TankSize.class))
        .flatMap(holds)
        .map(p -> AmountText.print(p.typed()))
        .orElse("not checked");
  }

  private static Tank tank(Lease lease, String id) {
    return LeasePlaces.thing(id, Tank.class).in(lease);
  }

  private static Part<Tank, Optional<String>> model(Catalog catalog) {
    Part<Tank, Optional<String>> plain = Part.of(Tank.class, "model");
    return new Part<>(
        plain::in,
        (tank, id) -> {
          Tank named = plain.with(tank, id);
          return id.flatMap(i -> catalog.item(i, TankSize.class))
              .map(size -> sized(named, size))
              .orElse(named);
        });
  }

  /** An inlet over the top goes up or down with the shell. */
  private static Tank sized(Tank tank, TankSize size) {
    Length inlet = tank.inletHeight();
    if (tank.entry() == Tank.Entry.TOP) {
      double above = inlet.toFeet() - tank.shellHeight().toFeet();
      inlet = Length.ofFeet(Math.round((size.shellHeight().toFeet() + above) * 1e6) / 1e6);
    }
    Tank sized = Part.put(tank, "diameter", size.diameter());
    sized = Part.put(sized, "shellHeight", size.shellHeight());
    sized = Part.put(sized, "overflowHeight", size.overflowHeight());
    return Part.put(sized, "inletHeight", inlet);
  }
}
