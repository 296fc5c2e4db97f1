package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Separator;
import tankyard.engine.working.Source;

/** A vessel nobody knows the rated pressure of. */
public final class NameplateCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("no nameplate, no pressure; from 15 psi the pressure-vessel code");

  @Override
  public String id() {
    return "no-nameplate";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().separators().stream()
        .filter(s -> s.nameplate().isEmpty())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Separator separator) {
    return Finding.of(
            id(),
            Severity.NOTE,
            separator.id(),
            separator.name() + " has no nameplate pressure typed. No nameplate, no pressure.",
            SOURCE)
        .mendedBy(
            "Read the nameplate and type its pressure; without one, have a qualified shop rate it"
                + " or don't put it under pressure.",
            "A vessel full of liquid needs a relief valve with no valve under it.");
  }
}
