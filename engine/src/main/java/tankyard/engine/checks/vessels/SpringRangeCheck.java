package tankyard.engine.checks.vessels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Regulator;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.window.Setting;
import tankyard.engine.window.Window;
import tankyard.engine.working.Source;

/** The setting lies outside what the regulator's spring is made for. */
public final class SpringRangeCheck implements Check {
  private static final Source SOURCE = Source.lease("range of the spring, as typed");

  @Override
  public String id() {
    return "regulator-out-of-spring-range";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (Window window : evidence.windows()) {
      Optional<Regulator> regulator =
          evidence
              .lease()
              .thing(window.separatorId())
              .map(Separator.class::cast)
              .map(Separator::regulator);
      if (regulator.isPresent() && window.setting().isPresent()) {
        look(window, window.setting().get(), regulator.get()).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<Finding> look(Window window, Setting setting, Regulator regulator) {
    Pressure set = setting.regulator().value();
    Optional<Finding> low =
        regulator
            .rangeLow()
            .filter(limit -> set.toPsi() < limit.toPsi())
            .map(limit -> finding(window, set, "below", limit));
    return low.or(
        () ->
            regulator
                .rangeHigh()
                .filter(limit -> set.toPsi() > limit.toPsi())
                .map(limit -> finding(window, set, "above", limit)));
  }

  private Finding finding(Window window, Pressure set, String side, Pressure limit) {
    Versus psi = Versus.of(set, limit, Unit.PSI, 1);
    return Finding.of(
            id(),
            Severity.LOOK,
            window.separatorId(),
            window.separatorName()
                + "'s regulator at "
                + psi.value()
                + " is "
                + side
                + " the "
                + psi.limit()
                + " its spring is made for.",
            SOURCE)
        .mendedBy("Order the spring whose range has the setting near its middle.");
  }
}
