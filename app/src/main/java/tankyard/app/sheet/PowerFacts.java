package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.sheet.SheetResults.WorkedFact;
import tankyard.engine.study.PoleLoad;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;

/** What the electrician must know of a motor or a pole; the same in every case. */
final class PowerFacts {
  private final UnitSystem units;

  private PowerFacts(UnitSystem units) {
    this.units = units;
  }

  /** What concerns one thing: a pole, or what a motor drives. */
  static List<WorkedFact> of(List<PoleLoad> poles, String id, UnitSystem units) {
    PowerFacts power = new PowerFacts(units);
    List<WorkedFact> facts = new ArrayList<>();
    for (PoleLoad pole : poles) {
      if (pole.poleId().equals(id)) {
        facts.addAll(power.pole(pole));
      }
      pole.motors().stream()
          .filter(motor -> motor.thingId().equals(id))
          .forEach(motor -> facts.addAll(power.motor(motor)));
    }
    return facts;
  }

  private List<WorkedFact> pole(PoleLoad pole) {
    int motors = pole.motors().size();
    return List.of(
        amps(
            motors == 1 ? "Its motor runs on" : "Its " + motors + " motors run on",
            pole.running(),
            "All nearest to it, at full load."),
        amps("All start at once on", pole.together(), "When the power comes back."),
        amps(
            "One after the other on",
            pole.staggered(),
            "With a different delay on each timer, the largest last."));
  }

  private List<WorkedFact> motor(PoleLoad.Motor motor) {
    List<WorkedFact> facts = new ArrayList<>();
    facts.add(amps("Motor runs on", motor.running(), "At full load."));
    facts.add(amps("Starts on", motor.starting(), "Across the line, for a moment."));
    motor
        .lost()
        .ifPresent(
            lost -> {
              String run =
                  "Of the voltage, over "
                      + units.print(lost.length().si(), Dimension.LENGTH, 3)
                      + " of "
                      + lost.wire().words()
                      + ".";
              facts.add(fact("Its wire takes", lost.running(), Unit.PERCENT, run));
              facts.add(fact("As it starts", lost.starting(), Unit.PERCENT, run));
            });
    return facts;
  }

  private static WorkedFact amps(String label, Computed<?> current, String why) {
    return fact(label, current, Unit.AMPERE, why);
  }

  private static WorkedFact fact(String label, Computed<?> value, Unit unit, String why) {
    return WorkedFact.of(label, value, unit, Rounding.UP, why);
  }
}
