package tankyard.engine.checks.tanks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.BreathingResult;
import tankyard.engine.study.CaseResult;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** A vent through which a tank breathes too hard for its roof. */
public final class VentCheck implements Check {
  private static final Source SOURCE =
      Source.published("API Std 2000 (simple rule, before the 6th edition) against the roof");

  @Override
  public String id() {
    return "vent-too-small";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (BreathingResult tank : result.breathing()) {
        look(evidence, result, tank, "drawn in", tank.vacuum(), tank.holdsVacuum(), worst);
        look(evidence, result, tank, "pushed out", tank.pressure(), tank.holdsPressure(), worst);
      }
    }
    return worst.findings();
  }

  private void look(
      Evidence evidence,
      CaseResult result,
      BreathingResult tank,
      String way,
      Optional<Computed<Pressure>> across,
      Optional<Pressure> holds,
      Worst worst) {
    if (across.isEmpty() || holds.isEmpty()) {
      return;
    }
    double over = across.get().value().pascals() - holds.get().pascals();
    if (over > 0) {
      worst.add(
          tank.tankId(),
          over,
          () -> finding(evidence, result, tank, way, across.get(), holds.get()));
    }
  }

  private Finding finding(
      Evidence evidence,
      CaseResult result,
      BreathingResult tank,
      String way,
      Computed<Pressure> across,
      Pressure holds) {
    Versus ounces = Versus.of(across.value(), holds, Unit.OUNCE_PER_SQUARE_INCH, 2);
    List<String> ways = new ArrayList<>();
    ways.add(
        tank.bore()
            .map(
                d ->
                    "A vent of at least "
                        + Versus.print(Rounding.UP.round(d.value().toInches(), 1), Unit.INCH, 1)
                        + " clear bore that lifts at the same; its maker's curve decides.")
            .orElse("A vent that lifts well below what the roof holds."));
    ways.add("A second vent, kept from freezing; open the hatch while the truck draws.");
    return Finding.of(
            id(),
            Severity.FIX,
            tank.tankId(),
            evidence.nameOf(tank.tankId())
                + " feels "
                + ounces.value()
                + " across its vent from air "
                + way
                + "; its roof holds "
                + ounces.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(ways.toArray(String[]::new))
        .shownBy(across.working());
  }
}
