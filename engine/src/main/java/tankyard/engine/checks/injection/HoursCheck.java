package tankyard.engine.checks.injection;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The injection pump has few hours left in the day, or none. */
public final class HoursCheck implements Check {
  static final double LONG_HOURS = 20;
  static final double WHOLE_DAY = 24;

  /** Hours that differ only by rounding are the same. */
  private static final double SLIP = 1e-9;

  private static final Source SOURCE =
      Source.commonPractice("a pump that runs 12 to 20 hours a day has room for a bad day");

  @Override
  public String id() {
    return "injection-hours-long";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (InjectionResult injection : result.injections()) {
        double hours = injection.hours().value().toHours();
        if (hours > LONG_HOURS + SLIP) {
          worst.add(injection.pumpId(), hours, () -> finding(evidence, result, injection, hours));
        }
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, InjectionResult injection, double hours) {
    boolean never = hours > WHOLE_DAY + SLIP;
    Versus h = Versus.of(hours, never ? WHOLE_DAY : LONG_HOURS, Unit.HOUR, 1);
    String limit =
        never
            ? " a day, and a day has " + h.limit() + ": it can't keep up."
            : " a day, more than " + h.limit() + ": little is left for a bad day.";
    double least =
        injection.rate().toBarrelsPerDay() * injection.hours().value().toHours() / LONG_HOURS;
    return Finding.of(
            id(),
            never ? Severity.STOP : Severity.LOOK,
            injection.pumpId(),
            evidence.nameOf(injection.pumpId()) + " must run " + h.value() + limit,
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Sheaves for "
                + Versus.print(Math.ceil(least), Unit.BARREL_PER_DAY, 0)
                + ", if the permit's pressure at that rate and the motor allow it.",
            "A second pump, and a second well where the first can't take more.")
        .shownBy(injection.hours().working());
  }
}
