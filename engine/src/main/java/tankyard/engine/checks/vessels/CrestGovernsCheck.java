package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
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
    String reading = LimitName.reading(tank);
    String alone =
        tank.gauge().value().toPsi() > 0
            ? "would need " + reading
            : "would need nothing (" + reading + ")";
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
                + LimitName.reading(least)
                + ". The fall behind it pulls nothing: no siphon is counted on.",
            SOURCE)
        .inCase(least.caseId())
        .mendedBy(ways)
        .shownBy(least.gauge().working());
  }
}
