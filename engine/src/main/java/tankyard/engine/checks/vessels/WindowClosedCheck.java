package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.window.OilLeg;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** No regulator setting works: the least is above the most, or too close under it. */
public final class WindowClosedCheck implements Check {
  /** A regulator is set to tenths; with this much room one of them fits. */
  private static final double FINEST_PSI = 0.1;

  private static final Source SOURCE =
      Source.definition("the most less the least less the regulator's build-up");

  @Override
  public String id() {
    return "window-closed";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (Window window : evidence.windows()) {
      if (!window.open() && window.most().isPresent()) {
        PressureLimit most = window.most().get();
        window
            .least()
            .filter(least -> roomPsi(least, most, window) < FINEST_PSI)
            .map(least -> tooNarrow(evidence, window, least, most))
            .or(() -> window.oilLeg().map(leg -> oilLeg(evidence, window, leg, most)))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private static double roomPsi(PressureLimit least, PressureLimit most, Window window) {
    return most.gauge().value().toPsi() - least.gauge().value().toPsi() - window.buildUp().toPsi();
  }

  private Finding tooNarrow(
      Evidence evidence, Window window, PressureLimit least, PressureLimit most) {
    List<String> ways = new ArrayList<>(LowerLeast.ways(evidence, window));
    ways.addAll(RaiseMost.ways(window));
    ways.add("Else a transfer pump behind a separator at low pressure, or a gun barrel.");
    Finding finding =
        Finding.of(
                id(),
                Severity.STOP,
                window.separatorId(),
                "No setting of "
                    + window.separatorName()
                    + " works: the gauge must read at least "
                    + LimitName.reading(least)
                    + " ("
                    + least.name()
                    + (most.beyondAnyGauge() ? "), and " : ") and ")
                    + LimitName.most(most)
                    + room(least, most, window),
                SOURCE)
            .mendedBy(ways)
            .shownBy(working(window, least, most));
    return least.caseId().equals(most.caseId()) ? finding.inCase(least.caseId()) : finding;
  }

  /** Told only where some reading would do: short of a reading below nothing is no number. */
  private static String room(PressureLimit least, PressureLimit most, Window window) {
    if (most.beyondAnyGauge()) {
      return ".";
    }
    double psi = roomPsi(least, most, window);
    String with =
        "; with the regulator's build-up of " + Versus.print(window.buildUp(), Unit.PSI, 1);
    return psi < 0
        ? with + " the window is " + Versus.print(-psi, Unit.PSI, 1) + " short."
        : with + " only " + Versus.print(psi, Unit.PSI, 2) + " is left, less than can be set.";
  }

  private static Working working(Window window, PressureLimit least, PressureLimit most) {
    return Working.of(
            "Room in the window",
            "W",
            "Pm-Pn-b",
            Unit.PSI,
            SOURCE,
            Term.of("Pm", "most: " + most.name(), most.gauge().value(), Unit.PSI),
            Term.of("Pn", "least: " + least.name(), least.gauge().value(), Unit.PSI),
            Term.of("b", "build-up of the regulator", window.buildUp(), Unit.PSI))
        .from(List.of(most.gauge().working(), least.gauge().working()));
  }

  private Finding oilLeg(Evidence evidence, Window window, OilLeg leg, PressureLimit most) {
    List<String> ways = new ArrayList<>();
    ways.add("A bigger oil leg, or an oil tank that stands lower.");
    ways.addAll(RaiseMost.ways(window));
    return Finding.of(
            id(),
            Severity.STOP,
            window.separatorId(),
            "No setting of "
                + window.separatorName()
                + " works: "
                + evidence.nameOf(leg.lineId())
                + " needs "
                + LimitName.reading(leg.need().value(), Rounding.UP)
                + " at the regulator to reach its tank, and "
                + (most.beyondAnyGauge() ? "" : "the gauge may read ")
                + LimitName.most(most)
                + " with a build-up of "
                + Versus.print(window.buildUp(), Unit.PSI, 1)
                + ".",
            SOURCE)
        .inCase(leg.caseId())
        .mendedBy(ways)
        .shownBy(leg.need().working());
  }
}
