package tankyard.engine.checks.vessels;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.window.FloatWork;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** With the water leg drained the float cannot open against the setting; with it full it can. */
public final class FloatDrainedCheck implements Check {
  private static final Source SOURCE =
      Source.definition("the pull across the seat with nothing behind the valve");

  @Override
  public String id() {
    return "float-stuck-leg-drained";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.windows().stream().flatMap(window -> look(window).stream()).toList();
  }

  private Optional<Finding> look(Window window) {
    Optional<Pressure> gauge = window.advised().map(setting -> setting.gauge());
    return window
        .floatWork()
        .filter(work -> gauge.filter(g -> between(work, g)).isPresent())
        .map(work -> finding(window, work, gauge.orElseThrow()));
  }

  /** Too much with the leg full is told by the window. */
  private static boolean between(FloatWork work, Pressure gauge) {
    return gauge.pascals() > work.legDrained().value().pascals()
        && gauge.pascals() <= work.legFull().value().pascals();
  }

  private Finding finding(Window window, FloatWork work, Pressure gauge) {
    Versus psi = Versus.of(gauge, work.legDrained().value(), Unit.PSI, 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            window.separatorId(),
            "With the water leg drained, as at the first start or after a repair, "
                + window.separatorName()
                + "'s float opens only up to "
                + psi.limit()
                + " on the gauge; it is to read "
                + psi.value()
                + ". The valve stays shut, and all the fluid goes to the oil tank.",
            SOURCE)
        .mendedBy(
            "Fill the water leg first: regulator screwed out, the float's lever worked by hand"
                + " until water arrives at the tank. Then bring it up to the setting.",
            "A smaller port, a longer lever, a double-seated or pilot-worked valve.")
        .shownBy(work.legDrained().working());
  }
}
