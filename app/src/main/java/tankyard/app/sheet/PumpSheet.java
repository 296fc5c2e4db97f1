package tankyard.app.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.PumpType;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Lease;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Unit;

/** The fields of an injection pump. */
final class PumpSheet {
  private PumpSheet() {}

  static void fill(SheetForm sheet, String id) {
    sheet.form.section("");
    Fields<Lease, InjectionPump> pump = sheet.thing("pump", id, InjectionPump.class);
    sheet.model(
        pump,
        "Pump",
        "A catalogue pump fills in rate, efficiency and motor.",
        PumpType.class,
        type -> true,
        model(sheet.catalog));
    pump.amount(
        "rate",
        "Pumps",
        "While it runs. The wellhead's pressure follows this, not the day's average.");
    pump.amount("efficiency", "Efficiency", "Pump and drive together: the motor makes up the rest.")
        .assumed(Assumed.of(Defaults.PUMP_EFFICIENCY));
    pump.amount("relief", "Relief valve", "On its discharge, piped back, no valve under it.")
        .assumedFrom(lease -> "not checked");
    drive(sheet, pump);
    sheet.form.section("Power");
    pump.amount("motor", "Motor", "Its nameplate, to hold against the power it must give.")
        .assumedFrom(lease -> "not checked");
    MotorFields.fill(sheet, pump, "pump", id, InjectionPump.class);
    sheet.form.section("Suction");
    pump.amount("suctionNeeded", "Needs at its suction", "Head above vapour, as its maker says.")
        .unit(Unit.FOOT, Unit.METRE)
        .assumedFrom(lease -> "not checked");
    sheet.form.section("Heights above its ground");
    pump.amount("suctionHeight", "Suction", "Water must stand above it.");
    pump.amount("dischargeHeight", "Discharge", "Its gauge reads from here.");
    sheet.place("pump", id);
    sheet.ground(pump, id);
  }

  private static void drive(SheetForm sheet, Fields<Lease, InjectionPump> pump) {
    sheet.form.section("Plungers and belt");
    pump.<Optional<InjectionPump.Plungers>>choice(
        "plungers",
        "Plungers",
        "The more, the smoother it draws: less head goes into speeding the water up.",
        lease -> plungers(),
        p ->
            p.map(InjectionPump.Plungers::words)
                .orElse(Defaults.PUMP_PLUNGERS.words() + " (assumed)"));
    pump.amount("speed", "Turns at", "Its crankshaft: every turn speeds the water up anew.")
        .assumed(Assumed.of(Defaults.PUMP_SPEED));
    pump.amount("plunger", "Plunger", "Its diameter: with the stroke, what a turn delivers.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumedFrom(lease -> "not known");
    pump.amount("stroke", "Stroke", "How far each plunger goes.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumedFrom(lease -> "not known");
    pump.amount("slip", "Slips", "What leaks back past valves and packing.")
        .assumed(Assumed.of(Defaults.PUMP_SLIP));
    pump.amount("sheave", "Its sheave", "Pitch diameter: the motor's follows from it.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumedFrom(lease -> "not known");
    pump.amount("motorSpeed", "Motor turns at", "At full load, on its nameplate.")
        .assumedFrom(lease -> Assumed.of(Defaults.MOTOR_SPEED) + " usual");
  }

  private static List<Optional<InjectionPump.Plungers>> plungers() {
    return Stream.concat(
            Stream.of(Optional.<InjectionPump.Plungers>empty()),
            Arrays.stream(InjectionPump.Plungers.values()).map(Optional::of))
        .toList();
  }

  private static Part<InjectionPump, Optional<String>> model(Catalog catalog) {
    Part<InjectionPump, Optional<String>> plain = Part.of(InjectionPump.class, "model");
    return new Part<>(
        plain::in,
        (pump, id) -> {
          InjectionPump named = plain.with(pump, id);
          return id.flatMap(i -> catalog.item(i, PumpType.class))
              .map(type -> filled(named, type))
              .orElse(named);
        });
  }

  private static InjectionPump filled(InjectionPump pump, PumpType type) {
    InjectionPump filled = Part.put(pump, "rate", type.rate());
    filled = Part.put(filled, "efficiency", Optional.of(type.efficiency()));
    return Part.put(filled, "motor", Optional.of(type.motor()));
  }
}
