package tankyard.engine.checks.tanks;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Defaults;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** With the injection pump down the water tanks run over before anybody looks again. */
public final class WaterHoursCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("room above pump-on for the hours nobody looks");

  @Override
  public String id() {
    return "water-hours-short";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Time night = evidence.lease().practice().nightOut().orElse(Defaults.NIGHT_OUT);
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      result
          .storage()
          .waterHours()
          .filter(hours -> hours.value().seconds() < night.seconds())
          .ifPresent(
              hours ->
                  worst.add("", -hours.value().seconds(), () -> finding(result, hours, night)));
    }
    return worst.findings();
  }

  private Finding finding(CaseResult result, Computed<Time> hours, Time night) {
    Versus h = Versus.of(hours.value(), night, Unit.HOUR, 1);
    double rate = result.storage().waterRate().toBarrelsPerDay();
    double more = rate * (night.toHours() - hours.value().toHours()) / 24;
    return Finding.of(
            id(),
            Severity.FIX,
            "",
            "With the injection pump down the water tanks run over in "
                + h.value()
                + " at "
                + Versus.print(rate, Unit.BARREL_PER_DAY, 0)
                + "; the lease is left alone for "
                + h.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Room for "
                + Versus.print(Math.ceil(more), Unit.BARREL, 0)
                + " more above pump-on: a second tank beside it, a taller one, or a lower pump-on.",
            "A high switch on the water tank that stops the wells and leaves the pump alone.")
        .shownBy(hours.working());
  }
}
