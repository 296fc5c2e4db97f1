package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.sheet.SheetResults.WorkedFact;
import tankyard.engine.study.PumpDrive;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;

/** Speed and sheaves of a pump; the same in every case. */
final class DriveFacts {
  private DriveFacts() {}

  static List<WorkedFact> of(PumpDrive drive, UnitSystem units) {
    Unit small = units == UnitSystem.METRIC ? Unit.MILLIMETRE : Unit.INCH;
    List<WorkedFact> facts = new ArrayList<>();
    drive
        .delivers()
        .ifPresent(
            d ->
                facts.add(
                    fact(
                        "As typed delivers",
                        d,
                        units.unit(Dimension.LIQUID_RATE),
                        "Plungers, stroke and speed, slip taken off.")));
    facts.add(
        fact("Its rate asks for", drive.speed(), Unit.RPM, "To deliver what it pumps above."));
    drive
        .motorSheave()
        .ifPresent(
            s -> facts.add(fact("Sheave on the motor", s, small, "Pitch diameter for that.")));
    return facts;
  }

  private static WorkedFact fact(String label, Computed<?> value, Unit unit, String why) {
    return WorkedFact.of(label, value, unit, Rounding.NEAREST, why);
  }
}
