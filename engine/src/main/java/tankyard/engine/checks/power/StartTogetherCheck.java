package tankyard.engine.checks.power;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.PoleLoad;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** After a power cut all motors of a pole start at once. */
public final class StartTogetherCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("a motor starts on about six times its running amps");

  @Override
  public String id() {
    return "motors-start-together";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.yard().power().stream()
        .filter(pole -> pole.motors().size() > 1)
        .map(pole -> finding(evidence, pole))
        .toList();
  }

  private Finding finding(Evidence evidence, PoleLoad pole) {
    return Finding.of(
            id(),
            Severity.LOOK,
            pole.poleId(),
            "When the power comes back, the "
                + pole.motors().size()
                + " motors of "
                + evidence.nameOf(pole.poleId())
                + " ask for "
                + Versus.print(pole.together().value(), Unit.AMPERE, 0)
                + " at once; one after the other, "
                + Versus.print(pole.staggered().value(), Unit.AMPERE, 0)
                + " at most.",
            SOURCE)
        .mendedBy(
            "A different delay on each motor's timer. It keeps the wells from coming on together"
                + " too, for which the separator and the water leg must else be sized.")
        .shownBy(pole.together().working());
  }
}
