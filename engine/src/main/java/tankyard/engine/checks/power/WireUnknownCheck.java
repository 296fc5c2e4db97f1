package tankyard.engine.checks.power;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.NotTyped;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.PoleLoad;

/** Motors whose wire nobody typed: what voltage they lose is not known. */
public final class WireUnknownCheck implements Check {
  @Override
  public String id() {
    return "wire-unknown";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.yard().power().stream()
        .filter(pole -> !bare(evidence, pole).isEmpty())
        .map(pole -> finding(evidence, pole))
        .toList();
  }

  private static List<String> bare(Evidence evidence, PoleLoad pole) {
    return pole.motors().stream()
        .filter(motor -> motor.lost().isEmpty())
        .map(motor -> evidence.nameOf(motor.thingId()))
        .toList();
  }

  private Finding finding(Evidence evidence, PoleLoad pole) {
    return Finding.of(
            id(),
            Severity.NOTE,
            pole.poleId(),
            "What voltage is lost on the way from "
                + evidence.nameOf(pole.poleId())
                + " to "
                + Several.named(bare(evidence, pole))
                + " is not checked: nobody typed the wire.",
            NotTyped.SOURCE)
        .mendedBy("Type gauge and metal of each wire.");
  }
}
