package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** A hill on the water leg asks for more than the tank does. */
public final class CrestGovernsCheck implements Check {
  private static final Source SOURCE =
      Source.definition("hydrostatics; past a crest the line runs part full and pulls nothing");

  @Override
  public String id() {
    return "crest-governs";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (Window window : evidence.windows()) {
      window
          .least()
          .filter(least -> least.kind() == PressureLimit.Kind.CREST)
          .ifPresent(
              least ->
                  window
                      .tankAlone()
                      .ifPresent(tank -> found.add(finding(evidence, window, least, tank))));
    }
    return found;
  }

  private Finding finding(
      Evidence evidence, Window window, PressureLimit least, PressureLimit tank) {
    Versus psi = Versus.of(tank.gauge().value(), least.gauge().value(), Unit.PSI, 1);
    String alone =
        tank.gauge().value().toPsi() > 0
            ? "would need " + psi.value()
            : "would need nothing (" + psi.value() + ")";
    List<String> ways = new ArrayList<>(LowerLeast.ways(evidence, window));
    ways.add("Put an air vent at the crest, or expect the line to gulp.");
    return Finding.of(
            id(),
            Severity.LOOK,
            least.thingId(),
            "The tank alone "
                + alone
                + "; "
                + LimitName.of(least)
                + " needs "
                + psi.limit()
                + ". The fall behind it pulls nothing: no siphon is counted on.",
            SOURCE)
        .inCase(least.caseId())
        .mendedBy(ways)
        .shownBy(least.gauge().working());
  }
}
