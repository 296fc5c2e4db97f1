package tankyard.app.sheet;

import java.util.Locale;
import java.util.Optional;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Unit;

/** The fields of a separator; its two valves have sheets of their own. */
final class SeparatorSheet {
  private static final String UNCHECKED = "not checked";

  private SeparatorSheet() {}

  static void fill(SheetForm sheet, Separator now) {
    String id = now.id();
    sheet.form.section("");
    Fields<Lease, Separator> vessel = sheet.thing("separator", id, Separator.class);
    sheet.model(
        vessel,
        "Size",
        "A catalogue size fills in diameter, length and nameplate; they can be changed after.",
        SeparatorSize.class,
        size -> true,
        model(sheet.catalog));
    vessel.oneOf(
        Separator.Shape.class,
        "shape",
        "Shape",
        "How it lies decides how much stands above and below the interface.",
        shape -> shape.name().toLowerCase(Locale.ROOT));
    vessel
        .amount("diameter", "Diameter", "With the length: how long oil and water stay.")
        .unit(Unit.INCH, Unit.MILLIMETRE);
    vessel.amount("length", "Length", "Seam to seam; the height of a vertical one.");
    heights(sheet, vessel);
    limits(sheet, vessel);
    DumpValveSheet.fill(sheet, vessel);
    if (now.dumpValve().floatBall().isPresent()) {
      DumpValveSheet.fillBall(vessel);
      whatIf(vessel);
    }
    RegulatorSheet.fill(sheet, vessel);
    sheet.place("separator", id);
    sheet.ground(vessel, id);
  }

  private static void heights(SheetForm sheet, Fields<Lease, Separator> vessel) {
    sheet.form.section("Heights above its ground");
    vessel
        .amount("bottomHeight", "Bottom of the shell", "Says how much stands below the interface.")
        .assumedFrom(lease -> "interface mid-vessel");
    vessel.amount("inletHeight", "Inlet", "Wells lift to it, and to the oil above it.");
    vessel.amount(
        "interfaceHeight",
        "Interface",
        "Where the float holds the water: the water below it helps to push itself out.");
    vessel.amount(
        "gaugeHeight",
        "Gauge",
        "A gauge low on the vessel reads high: 4 ft of oil are about 1.5 psi.");
    vessel.amount(
        "oilOutletHeight", "Oil outlet", "Where the regulator sits; its setting holds there.");
    vessel.amount("waterOutletHeight", "Water outlet", "Where the dump valve sits.");
  }

  private static void limits(SheetForm sheet, Fields<Lease, Separator> vessel) {
    sheet.form.section("Stands");
    vessel
        .amount(
            "nameplate", "Nameplate", "No nameplate, no pressure: nobody can say what it holds.")
        .assumedFrom(lease -> UNCHECKED);
    vessel
        .amount("relief", "Relief valve", "A liquid-full vessel needs one with no valve under it.")
        .assumedFrom(lease -> UNCHECKED);
    vessel
        .amount("gaugeRange", "Gauge reads up to", "A setting past its range can't be read.")
        .assumedFrom(lease -> UNCHECKED);
  }

  private static void whatIf(Fields<Lease, Separator> vessel) {
    vessel
        .amount("otherWater", "Flood freshens to", "What the float can still pull then.")
        .unit(Unit.SPECIFIC_GRAVITY, Unit.SPECIFIC_GRAVITY)
        .assumed(Assumed.of(Defaults.OTHER_WATER));
  }

  private static Part<Separator, Optional<String>> model(Catalog catalog) {
    Part<Separator, Optional<String>> plain = Part.of(Separator.class, "model");
    return new Part<>(
        plain::in,
        (vessel, id) -> {
          Separator named = plain.with(vessel, id);
          return id.flatMap(i -> catalog.item(i, SeparatorSize.class))
              .map(size -> sized(named, size))
              .orElse(named);
        });
  }

  private static Separator sized(Separator vessel, SeparatorSize size) {
    Separator sized = Part.put(vessel, "shape", size.shape());
    sized = Part.put(sized, "diameter", size.diameter());
    sized = Part.put(sized, "length", size.length());
    return Part.put(sized, "nameplate", Optional.of(size.nameplate()));
  }
}
