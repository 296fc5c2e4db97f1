package tankyard.engine.checks.injection;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.units.Power;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The injection pump asks for more than its motor gives. */
public final class MotorCheck implements Check {
  private static final Source SOURCE =
      Source.definition("power at the shaft against the motor's nameplate");

  @Override
  public String id() {
    return "motor-too-small";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (InjectionResult injection : result.injections()) {
        Power needed = injection.power().value();
        evidence.lease().injectionPumps().stream()
            .filter(pump -> pump.id().equals(injection.pumpId()))
            .filter(pump -> isSmall(pump, needed))
            .forEach(
                pump ->
                    worst.add(pump.id(), needed.watts(), () -> finding(result, injection, pump)));
      }
    }
    return worst.findings();
  }

  private static boolean isSmall(InjectionPump pump, Power needed) {
    return pump.motor().filter(motor -> needed.watts() > motor.watts()).isPresent();
  }

  private Finding finding(CaseResult result, InjectionResult injection, InjectionPump pump) {
    Versus hp =
        Versus.of(injection.power().value(), pump.motor().orElseThrow(), Unit.HORSEPOWER, 1);
    return Finding.of(
            id(),
            Severity.FIX,
            pump.id(),
            pump.name()
                + " needs "
                + hp.value()
                + " at its shaft; the motor gives "
                + hp.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "The next bigger motor, with wire and starter to suit: a licensed electrician's job.",
            "Sheaves for a lower rate and longer hours.")
        .shownBy(injection.power().working());
  }
}
