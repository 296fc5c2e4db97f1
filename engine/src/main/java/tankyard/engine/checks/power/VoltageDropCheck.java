package tankyard.engine.checks.power;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.PoleLoad;
import tankyard.engine.study.PoleLoads;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A wire takes more of the voltage than is usually left to it. */
public final class VoltageDropCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("no more than 5 % of the voltage lost on the way to a motor");

  @Override
  public String id() {
    return "voltage-drop-large";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (PoleLoad pole : evidence.yard().power()) {
      for (PoleLoad.Motor motor : pole.motors()) {
        motor
            .lost()
            .filter(lost -> lost.running().value().ratio() > PoleLoads.USUAL_LOSS.ratio())
            .ifPresent(lost -> found.add(finding(evidence, pole, motor, lost)));
      }
    }
    return found;
  }

  private Finding finding(
      Evidence evidence, PoleLoad pole, PoleLoad.Motor motor, PoleLoad.Lost lost) {
    Versus percent = Versus.of(lost.running().value(), PoleLoads.USUAL_LOSS, Unit.PERCENT, 1);
    return Finding.of(
            id(),
            Severity.FIX,
            motor.thingId(),
            "The wire to "
                + evidence.nameOf(motor.thingId())
                + ", "
                + Versus.print(lost.length(), Unit.FOOT, 0)
                + " of "
                + lost.wire().words()
                + ", takes "
                + percent.value()
                + " of the voltage; "
                + percent.limit()
                + " are usual. The motor starts hard and runs hot.",
            SOURCE)
        .mendedBy(
            lost.enough()
                .map(gauge -> gauge.words() + " " + lost.wire().metal().words() + " would do.")
                .orElse("No single wire up to 4/0 would do: more volts, or three phases."),
            "Set the transformer of "
                + evidence.nameOf(pole.poleId())
                + " nearer to the motor. A licensed electrician decides.")
        .shownBy(lost.running().working());
  }
}
