package tankyard.app.sheet;

import java.util.List;
import java.util.Optional;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.GunBarrelSize;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Lease;
import tankyard.engine.units.Unit;

/** The fields of a gun barrel. */
final class GunBarrelSheet {
  private static final List<Optional<GunBarrel.Vent>> VENTS =
      List.of(Optional.empty(), Optional.of(GunBarrel.Vent.OPEN), Optional.of(GunBarrel.Vent.NONE));

  private GunBarrelSheet() {}

  static void fill(SheetForm sheet, String id) {
    sheet.form.section("");
    Fields<Lease, GunBarrel> barrel = sheet.thing("gun-barrel", id, GunBarrel.class);
    sheet.model(
        barrel,
        "Size",
        "A catalogue size fills in diameter and shell; they can be changed after.",
        GunBarrelSize.class,
        size -> true,
        model(sheet.catalog));
    barrel.amount("diameter", "Diameter", "Inside: how long oil and water stay.");
    barrel.amount("shellHeight", "Shell", "Height of the shell above the bottom.");
    heights(sheet, barrel);
    leg(sheet, barrel);
    liquids(sheet, barrel);
    sheet.place("gun-barrel", id);
    sheet.ground(barrel, id);
  }

  private static void heights(SheetForm sheet, Fields<Lease, GunBarrel> barrel) {
    sheet.form.section("Heights above its bottom");
    barrel.amount(
        "inletHeight",
        "Inlet",
        "Wells lift to it, and to the liquid above it; above the oil outlet it falls in.");
    barrel.amount("oilOutletHeight", "Oil outlet", "The oil stands there and runs off by itself.");
    barrel.amount(
        "interfaceHeight", "Interface wanted", "The weir of the leg is worked out to hold it.");
    barrel
        .amount(
            "weirHeight",
            "Weir as cut",
            "If the leg is there already: where it holds the interface is worked out.")
        .assumedFrom(lease -> "worked out");
    barrel
        .amount("nipple", "Nipple reaches", "How far the weir can be set up or down.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumedFrom(lease -> "no nipple");
  }

  private static void leg(SheetForm sheet, Fields<Lease, GunBarrel> barrel) {
    sheet.form.section("Water leg");
    barrel
        .choice(
            "legPipe",
            "Leg",
            "Up to the weir: an inch lost in it lifts the interface five.",
            lease -> PipeChoices.pipes(sheet, lease),
            id -> PipeChoices.words(sheet, id))
        .wide();
    barrel
        .amount("legLength", "Length of leg", "Its fittings counted as pipe.")
        .assumedFrom(lease -> "2 x weir height");
    barrel
        .choice(
            "downcomerPipe",
            "Downcomer",
            "From the weir down: it must swallow the surge and let air back past it.",
            lease -> PipeChoices.pipesOrNone(sheet, lease),
            id -> id.map(i -> PipeChoices.words(sheet, i)).orElse("as the leg"))
        .wide();
    barrel.choice(
        "vent",
        "Vent",
        "At the top of the leg, led to the vessel's gas space: else it pulls like a siphon.",
        lease -> VENTS,
        GunBarrelSheet::words);
  }

  private static String words(Optional<GunBarrel.Vent> vent) {
    return vent.map(v -> v == GunBarrel.Vent.OPEN ? "open" : "none").orElse("open, assumed");
  }

  private static void liquids(SheetForm sheet, Fields<Lease, GunBarrel> barrel) {
    sheet.form.section("What if");
    barrel
        .amount(
            "otherWater", "Other water", "As when a flood freshens it: where the interface goes.")
        .assumedFrom(lease -> "not asked");
    barrel
        .amount("otherOil", "Other oil", "As from new wells: where the interface goes.")
        .assumedFrom(lease -> "not asked");
  }

  private static Part<GunBarrel, Optional<String>> model(Catalog catalog) {
    Part<GunBarrel, Optional<String>> plain = Part.of(GunBarrel.class, "model");
    return new Part<>(
        plain::in,
        (barrel, id) -> {
          GunBarrel named = plain.with(barrel, id);
          return id.flatMap(i -> catalog.item(i, GunBarrelSize.class))
              .map(size -> sized(named, size))
              .orElse(named);
        });
  }

  private static GunBarrel sized(GunBarrel barrel, GunBarrelSize size) {
    GunBarrel sized = Part.put(barrel, "diameter", size.diameter());
    return Part.put(sized, "shellHeight", size.shellHeight());
  }
}
