package tankyard.engine.checks.site;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Status;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LaidLine;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A trench deep enough to bury a person. */
public final class DeepTrenchCheck implements Check {
  static final Length WAY_OUT = Length.ofFeet(4);
  static final Length SHORING = Length.ofFeet(5);

  private static final Source SOURCE =
      Source.published("29 CFR 1926.651 and .652, as restated by contractors");

  @Override
  public String id() {
    return "deep-trench";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<Finding> found = new ArrayList<>();
    for (LaidLine laid : evidence.survey().laid().values()) {
      Length deepest = deepest(evidence.lease(), laid.line());
      if (laid.line().status() == Status.NEW && deepest.metres() >= WAY_OUT.metres()) {
        found.add(finding(laid.line(), deepest));
      }
    }
    return found;
  }

  static Length deepest(Lease lease, Line line) {
    Length deepest = line.depth().or(() -> lease.practice().depth()).orElse(Defaults.DEPTH);
    for (RoutePoint peg : line.route()) {
      Length here = peg.depth().orElse(deepest);
      deepest = here.metres() > deepest.metres() ? here : deepest;
    }
    return deepest;
  }

  private Finding finding(Line line, Length deepest) {
    boolean shored = deepest.metres() >= SHORING.metres();
    return Finding.of(
            id(),
            Severity.NOTE,
            line.id(),
            line.name()
                + "'s trench is "
                + Versus.print(deepest, Unit.FOOT, 1)
                + " deep: from 4 ft it needs a way out near by, from 5 ft protection against"
                + " caving in.",
            SOURCE)
        .mendedBy(
            shored
                ? "Slope, shore or box it, spoil 2 ft back, a ladder; poor ground needs it sooner."
                : "A ladder or ramp, spoil 2 ft back; poor ground needs shoring at this depth too.");
  }
}
