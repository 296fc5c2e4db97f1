package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.FloatType;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.DumpValve.Around;
import tankyard.engine.lease.DumpValve.FloatBall;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Unit;

/** The fields of a dump valve and its float. */
final class DumpValveSheet {
  private DumpValveSheet() {}

  static void fill(SheetForm sheet, Fields<Lease, Separator> vessel) {
    sheet.form.section("Dump valve");
    Fields<Lease, DumpValve> valve = vessel.inside("dumpValve", "dump-valve", DumpValve.class);
    sheet.model(
        valve,
        "Valve",
        "A catalogue valve fills in its coefficient and its port.",
        ValveType.class,
        type -> type.duty() == ValveType.Duty.DUMP,
        model(sheet.catalog));
    valve.amount(
        "cv", "Cv wide open", "US gpm of water at 1 psi: a small valve eats up the setting.");
    valve
        .amount(
            "workingTravel",
            "Works at a travel of",
            "A float seldom holds it wide open; its loss is taken there.")
        .assumed(AmountText.print(Defaults.DUMP_TRAVEL.typed()));
    valve
        .amount(
            "port",
            "Port",
            "Bore of the seat: the float must pull it off against the pressure across it.")
        .unit(Unit.INCH, Unit.MILLIMETRE)
        .assumedFrom(lease -> "float not checked");
    around(valve);
    floatBall(sheet, valve);
  }

  private static void around(Fields<Lease, DumpValve> valve) {
    List<Optional<Around>> choices = new ArrayList<>();
    choices.add(Optional.empty());
    Arrays.stream(Around.values()).map(Optional::of).forEach(choices::add);
    valve.choice(
        "around",
        "Piped with",
        "A strainer keeps dirt out of the seat; a bypass lets water by while it is mended.",
        Part.<DumpValve, Optional<Around>>of(DumpValve.class, "around"),
        lease -> choices,
        around -> around.map(Around::words).orElse("neither"));
  }

  private static void floatBall(SheetForm sheet, Fields<Lease, DumpValve> valve) {
    List<Optional<FloatBall>> choices = new ArrayList<>();
    choices.add(Optional.empty());
    sheet.catalog.list(FloatType.class).forEach(type -> choices.add(Optional.of(ball(type))));
    valve
        .choice(
            "floatBall",
            "Float",
            "A bigger port needs a bigger float: together they may set the most the gauge may read.",
            Part.<DumpValve, Optional<FloatBall>>of(DumpValve.class, "floatBall"),
            lease -> choices,
            ball -> words(ball, sheet.catalog))
        .wide();
  }

  /** The fields of the ball; only where there is one. */
  static void fillBall(Fields<Lease, Separator> vessel) {
    Fields<Lease, FloatBall> ball =
        vessel
            .inside("dumpValve", "dump-valve", DumpValve.class)
            .insideOptional("floatBall", "float", FloatBall.class);
    ball.amount("diameter", "Diameter of the ball", "Its volume makes the pull.")
        .unit(Unit.INCH, Unit.MILLIMETRE);
    ball.amount(
            "weight",
            "Weight against water",
            "It must lie between oil and brine; halfway pulls as hard up as down.")
        .unit(Unit.SPECIFIC_GRAVITY, Unit.SPECIFIC_GRAVITY);
    ball.amount("lever", "Lever", "Pull at the seat over pull at the ball.")
        .unit(Unit.ONE, Unit.ONE);
  }

  private static FloatBall ball(FloatType type) {
    return new FloatBall(type.diameter(), type.weight(), type.lever());
  }

  private static String words(Optional<FloatBall> ball, Catalog catalog) {
    if (ball.isEmpty()) {
      return "not known, so not checked";
    }
    return catalog.list(FloatType.class).stream()
        .filter(type -> ball(type).equals(ball.get()))
        .map(FloatType::name)
        .findFirst()
        .orElse("own float, " + AmountText.print(ball.get().diameter().typed()));
  }

  private static Part<DumpValve, Optional<String>> model(Catalog catalog) {
    Part<DumpValve, Optional<String>> plain = Part.of(DumpValve.class, "model");
    return new Part<>(
        plain::in,
        (valve, id) -> {
          DumpValve named = plain.with(valve, id);
          return id.flatMap(i -> catalog.item(i, ValveType.class))
              .map(type -> filled(named, type))
              .orElse(named);
        });
  }

  private static DumpValve filled(DumpValve valve, ValveType type) {
    return valve.withCv(type.cv().orElse(valve.cv())).withPort(type.port().or(valve::port));
  }
}
