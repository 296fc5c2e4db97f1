package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.Separator;
import tankyard.engine.working.Source;

/** A dump valve with no strainer ahead of it or no bypass round it. */
public final class DumpValveBareCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("a strainer ahead of the dump valve and a bypass round it");

  @Override
  public String id() {
    return "dump-valve-bare";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().separators().stream()
        .filter(s -> !s.dumpValve().hasStrainer() || !s.dumpValve().hasBypass())
        .map(this::finding)
        .toList();
  }

  private Finding finding(Separator separator) {
    return Finding.of(
            id(),
            Severity.NOTE,
            separator.id(),
            separator.name()
                + "'s dump valve has "
                + missing(separator.dumpValve())
                + ": when it plugs, all the fluid goes over to the oil tank.",
            SOURCE)
        .mendedBy(
            "Draw what is missing on its sheet: the leg's loss and the bill then count it. Have"
                + " the high switch and an overflow for all the fluid either way.");
  }

  private static String missing(DumpValve valve) {
    if (valve.hasStrainer()) {
      return "no bypass round it";
    }
    return valve.hasBypass() ? "no strainer ahead" : "no strainer ahead and no bypass round it";
  }
}
