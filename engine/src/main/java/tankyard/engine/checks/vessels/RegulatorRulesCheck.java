package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Unit;
import tankyard.engine.window.OilLeg;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** The oil leg needs more than the regulator holds, so that its screw does nothing. */
public final class RegulatorRulesCheck implements Check {
  private static final Source SOURCE =
      Source.definition("the separator rides at what the oil leg needs");

  @Override
  public String id() {
    return "regulator-does-not-rule";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (Window window : evidence.windows()) {
      window
          .setting()
          .ifPresent(
              setting ->
                  window
                      .oilLeg()
                      .filter(leg -> !leg.regulatorRules())
                      .ifPresent(leg -> found.add(finding(evidence, window, setting, leg))));
    }
    return found;
  }

  private Finding finding(Evidence evidence, Window window, Setting setting, OilLeg leg) {
    Versus psi = Versus.of(leg.need().value(), setting.regulator().value(), Unit.PSI, 1);
    return Finding.of(
            id(),
            Severity.FIX,
            window.separatorId(),
            evidence.nameOf(leg.lineId())
                + " needs "
                + psi.value()
                + " at the regulator of "
                + window.separatorName()
                + ", no less than the "
                + psi.limit()
                + " it is set to: the separator rides there and the screw does nothing.",
            SOURCE)
        .inCase(leg.caseId())
        .mendedBy(
            window
                .recommended()
                .map(
                    r ->
                        "Set the regulator to "
                            + Versus.print(r.regulator().value(), Unit.PSI, 1)
                            + ".")
                .orElse("Lower the oil tank's inlet, if the window has no room above."),
            "A bigger oil leg loses less, most of all in winter.")
        .shownBy(leg.need().working());
  }
}
