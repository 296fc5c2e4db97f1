package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Well;
import tankyard.engine.study.Defaults;
import tankyard.engine.working.Source;

/** Wells on timers, and no case in which all of them run: peaks are nowhere looked at. */
public final class AllOnMissingCheck implements Check {
  private static final double DAY_H = 24;
  private static final Source SOURCE =
      Source.commonPractice(
          "separators, overflows and switches see the highest rate, not the mean");

  @Override
  public String id() {
    return "no-all-on-case";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    List<DesignCase> cases = evidence.lease().cases();
    boolean averages =
        !cases.isEmpty() && cases.stream().noneMatch(c -> c.running() == DesignCase.Running.ALL_ON);
    long timed = evidence.lease().wells().stream().filter(AllOnMissingCheck::timed).count();
    return averages && timed > 0 ? List.of(finding(timed)) : List.of();
  }

  private static boolean timed(Well well) {
    return well.status().stays()
        && well.runsPerDay().orElse(Defaults.RUNS_PER_DAY).toHours() < DAY_H;
  }

  private Finding finding(long timed) {
    return Finding.of(
            id(),
            Severity.LOOK,
            "",
            (timed == 1 ? "One well runs" : timed + " wells run")
                + " only part of the day, and none of the cases worked out has all wells on: retention,"
                + " overflow and high switches are held against the day's average alone.",
            SOURCE)
        .mendedBy("Add a case with all wells on, as after a power cut.");
  }
}
