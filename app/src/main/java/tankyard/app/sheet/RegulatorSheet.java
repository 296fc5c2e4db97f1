package tankyard.app.sheet;

import java.util.Optional;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.RegulatorType;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.Defaults;

/** The fields of a back-pressure regulator. */
final class RegulatorSheet {
  private RegulatorSheet() {}

  static void fill(SheetForm sheet, Fields<Lease, Separator> vessel) {
    sheet.form.section("Back-pressure regulator");
    Fields<Lease, Regulator> regulator = vessel.inside("regulator", "regulator", Regulator.class);
    sheet.model(
        regulator,
        "Regulator",
        "A catalogue regulator fills in its spring's range and its build-up.",
        RegulatorType.class,
        type -> true,
        model(sheet.catalog));
    regulator
        .amount(
            "setting", "Set to", "At the regulator. Leave it empty and the window recommends one.")
        .assumedFrom(lease -> "as recommended");
    regulator
        .amount(
            "buildUp",
            "Builds up",
            "How far the pressure rises above the setting at full flow: the window must hold that.")
        .assumed(Assumed.of(Defaults.BUILD_UP));
    regulator
        .amount("rangeLow", "Spring from", "It can't be set lower.")
        .assumedFrom(lease -> "not checked");
    regulator
        .amount("rangeHigh", "Spring up to", "It can't be set higher.")
        .assumedFrom(lease -> "not checked");
    regulator
        .amount("cv", "Cv", "Whether it passes all fluid when the dump valve is stuck.")
        .assumedFrom(lease -> "not checked");
  }

  private static Part<Regulator, Optional<String>> model(Catalog catalog) {
    Part<Regulator, Optional<String>> plain = Part.of(Regulator.class, "model");
    return new Part<>(
        plain::in,
        (regulator, id) -> {
          Regulator named = plain.with(regulator, id);
          return id.flatMap(i -> catalog.item(i, RegulatorType.class))
              .map(type -> filled(named, type))
              .orElse(named);
        });
  }

  private static Regulator filled(Regulator regulator, RegulatorType type) {
    return regulator
        .withBuildUp(type.buildUp().or(regulator::buildUp))
        .withRangeLow(Optional.of(type.rangeLow()))
        .withRangeHigh(Optional.of(type.rangeHigh()))
        .withCv(type.cv().or(regulator::cv));
  }
}
