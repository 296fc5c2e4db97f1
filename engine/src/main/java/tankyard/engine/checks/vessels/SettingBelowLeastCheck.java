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
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** The regulator as set can't push the design water into its tank. */
public final class SettingBelowLeastCheck implements Check {
  private static final double SLIP_PSI = 1e-9;
  private static final Source SOURCE =
      Source.definition("the least must be met with no oil flowing");

  @Override
  public String id() {
    return "setting-below-least";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (Window window : evidence.windows()) {
      window
          .setting()
          .filter(Setting::typed)
          .ifPresent(
              setting ->
                  window
                      .least()
                      .filter(least -> isBelow(setting, least))
                      .ifPresent(least -> found.add(finding(evidence, window, setting, least))));
    }
    return found;
  }

  private static boolean isBelow(Setting setting, PressureLimit least) {
    return setting.gauge().toPsi() < least.gauge().value().toPsi() - SLIP_PSI;
  }

  private Finding finding(Evidence evidence, Window window, Setting setting, PressureLimit least) {
    Versus psi = LimitName.against(setting.gauge(), least);
    List<String> ways = new ArrayList<>();
    window
        .recommended()
        .ifPresent(
            r ->
                ways.add(
                    "Set the regulator to "
                        + Versus.print(r.regulator().value(), Unit.PSI, 1)
                        + "."));
    ways.addAll(LowerLeast.ways(evidence, window));
    return Finding.of(
            id(),
            Severity.STOP,
            window.separatorId(),
            window.separatorName()
                + " is set to "
                + Versus.print(setting.regulator().value(), Unit.PSI, 2)
                + ", so its gauge reads "
                + psi.value()
                + "; the design water needs "
                + psi.limit()
                + " ("
                + least.name()
                + "). What does not go down the water leg goes over with the oil.",
            SOURCE)
        .inCase(least.caseId())
        .mendedBy(ways)
        .shownBy(least.gauge().working());
  }
}
