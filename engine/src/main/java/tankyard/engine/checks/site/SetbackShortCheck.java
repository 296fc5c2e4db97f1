package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Status;
import tankyard.engine.study.Setback;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A tank or vessel stands nearer to a landmark than the rule that was typed for it. */
public final class SetbackShortCheck implements Check {
  static final Source SOURCE =
      Source.commonPractice("held against the distance that was typed; the local rule governs");

  @Override
  public String id() {
    return "setback-short";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Setback.tooNear(evidence.lease()).stream()
        .map(setback -> finding(evidence, setback))
        .toList();
  }

  private Finding finding(Evidence evidence, Setback setback) {
    Versus feet = Versus.of(setback.clear().value(), setback.needed().orElseThrow(), Unit.FOOT, 0);
    boolean standing =
        evidence.lease().thing(setback.to()).filter(t -> t.status() == Status.HAVE).isPresent();
    return Finding.of(
            id(),
            standing ? Severity.LOOK : Severity.FIX,
            setback.to(),
            evidence.nameOf(setback.to())
                + " stands "
                + feet.value()
                + " from "
                + evidence.nameOf(setback.landmarkId())
                + "; the setback typed for it is "
                + feet.limit()
                + ".",
            SOURCE)
        .mendedBy(
            standing
                ? "Ask whether what stands already may stay: many rules let it, until it is"
                    + " rebuilt."
                : "Move it away, or ask for an exception in writing before dirt moves.")
        .shownBy(setback.clear().working());
  }
}
