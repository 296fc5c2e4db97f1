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

/** The regulator as set, built up at full flow, passes what something stands. */
public final class SettingAboveMostCheck implements Check {
  private static final double SLIP_PSI = 1e-9;
  private static final Source SOURCE =
      Source.definition("the most must be kept with the regulator built up");

  @Override
  public String id() {
    return "setting-above-most";
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
                      .most()
                      .filter(most -> isAbove(setting, most))
                      .ifPresent(most -> found.add(finding(window, setting, most))));
    }
    return found;
  }

  private static boolean isAbove(Setting setting, PressureLimit most) {
    return setting.gaugeAtFlow().toPsi() > most.gauge().value().toPsi() + SLIP_PSI;
  }

  private static String may(Versus psi, PressureLimit most) {
    return most.beyondAnyGauge()
        ? most.whyNoGauge(Unit.PSI) + "."
        : "it may read at most " + psi.limit() + " (" + most.name() + ").";
  }

  private Finding finding(Window window, Setting setting, PressureLimit most) {
    Versus psi = LimitName.against(setting.gaugeAtFlow(), most);
    List<String> ways = new ArrayList<>();
    window
        .recommended()
        .ifPresent(
            r ->
                ways.add(
                    "Set the regulator to "
                        + Versus.print(r.regulator().value(), Unit.PSI, 1)
                        + "."));
    ways.addAll(RaiseMost.ways(window));
    return Finding.of(
            id(),
            Severity.STOP,
            window.separatorId(),
            window.separatorName()
                + " is set to "
                + Versus.print(setting.regulator().value(), Unit.PSI, 2)
                + "; built up at full flow its gauge reads "
                + psi.value()
                + ", and "
                + may(psi, most),
            SOURCE)
        .inCase(most.caseId())
        .mendedBy(ways)
        .shownBy(most.gauge().working());
  }
}
