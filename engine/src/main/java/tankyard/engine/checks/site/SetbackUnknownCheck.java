package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.Setback;
import tankyard.engine.units.Unit;

/** A landmark is drawn and nobody has looked up how far to keep from it. */
public final class SetbackUnknownCheck implements Check {

  @Override
  public String id() {
    return "setback-not-typed";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.yard().setbacks().stream()
        .filter(setback -> setback.needed().isEmpty())
        .map(setback -> finding(evidence, setback))
        .toList();
  }

  private Finding finding(Evidence evidence, Setback setback) {
    return Finding.of(
            id(),
            Severity.NOTE,
            setback.landmarkId(),
            "No setback is typed for "
                + evidence.nameOf(setback.landmarkId())
                + ": "
                + evidence.nameOf(setback.to())
                + " stands "
                + Versus.print(setback.clear().value(), Unit.FOOT, 0)
                + " from it, and that is not checked.",
            SetbackShortCheck.SOURCE)
        .mendedBy("Look up the local rule, or ask who keeps it, and type the distance.")
        .shownBy(setback.clear().working());
  }
}
