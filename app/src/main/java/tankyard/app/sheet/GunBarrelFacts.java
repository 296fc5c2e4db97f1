package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.sheet.SheetResults.WorkedFact;
import tankyard.engine.study.GunBarrelCut;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Computed;

/** What a welder and a pumper must know of a gun barrel's leg; the same in every case. */
final class GunBarrelFacts {
  private final UnitSystem units;

  private GunBarrelFacts(UnitSystem units) {
    this.units = units;
  }

  static List<WorkedFact> of(GunBarrelCut cut, UnitSystem units) {
    return new GunBarrelFacts(units).facts(cut);
  }

  private List<WorkedFact> facts(GunBarrelCut cut) {
    List<WorkedFact> facts = new ArrayList<>();
    facts.add(fact("Weir", cut.weir(), "Holds the interface where it is wanted, the leg at rest."));
    facts.add(
        new WorkedFact(
            "Cut it at",
            FeetInches.print(cut.cut().value()),
            "Down to a quarter inch: a nipple can add height, not take it.",
            cut.cut()::working));
    facts.add(
        fact("Interface stands at", cut.interfaceHeight(), "With the weir as it is, at rest."));
    facts.add(small("An inch of weir moves it", cut.interfaceForAnInch(), "So little is needed."));
    facts.add(small("Weir must move by", cut.nippleNeeded(), "Up or down, for the liquids below."));
    for (GunBarrelCut.Drift drift : cut.drifts()) {
      facts.add(
          fact(
              "With " + drift.liquids(),
              drift.interfaceHeight(),
              "Where the interface goes if nobody touches the weir; "
                  + FeetInches.print(drift.weir().value())
                  + " would hold it."));
    }
    return facts;
  }

  private WorkedFact fact(String label, Computed<Length> height, String why) {
    return fact(label, height, units.unit(height.value().dimension()), why);
  }

  private WorkedFact small(String label, Computed<Length> height, String why) {
    return fact(label, height, units == UnitSystem.METRIC ? Unit.MILLIMETRE : Unit.INCH, why);
  }

  private static WorkedFact fact(String label, Computed<Length> height, Unit unit, String why) {
    return WorkedFact.of(label, height, unit, Rounding.NEAREST, why);
  }
}
