package tankyard.engine.checks.lines;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SharedLine;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/**
 * Timers in two banks would take some of the peak off a shared line. Told once, for the line that
 * gains most.
 */
public final class StaggerCheck implements Check {
  /** Less is not worth a walk to the timers. */
  static final double LEAST_PSI = 0.5;

  private static final Source SOURCE =
      Source.commonPractice("wells on timers, staggered in two banks");

  @Override
  public String id() {
    return "stagger-wells";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.cases().stream()
        .flatMap(c -> c.shared().stream().map(line -> new Gain(c, line)))
        .filter(gain -> gain.psi() >= LEAST_PSI)
        .max(Comparator.comparingDouble(Gain::psi))
        .map(gain -> List.of(finding(evidence, gain)))
        .orElse(List.of());
  }

  private Finding finding(Evidence evidence, Gain gain) {
    SharedLine line = gain.line();
    SharedLine.Staggered staggered = line.staggered().orElseThrow();
    return Finding.of(
            id(),
            Severity.NOTE,
            line.lineId(),
            "With every well on, "
                + evidence.nameOf(line.lineId())
                + " carries "
                + Versus.print(line.allOn(), Unit.BARREL_PER_DAY, 0)
                + " and loses "
                + Versus.print(line.allOnLoss(), Unit.PSI, 1)
                + "; with the timers in two banks that never run together it carries "
                + Versus.print(staggered.rate(), Unit.BARREL_PER_DAY, 0)
                + " and loses "
                + Versus.print(staggered.loss(), Unit.PSI, 1)
                + ": "
                + Versus.print(gain.psi(), Unit.PSI, 1)
                + " less on every well behind it.",
            SOURCE)
        .inCase(gain.result().designCase().id())
        .mendedBy(
            "One bank: "
                + names(evidence, staggered.first())
                + "; the other: "
                + names(evidence, staggered.second())
                + ". After an outage set them going bank by bank, or all come on together.");
  }

  private static String names(Evidence evidence, List<String> wells) {
    return Several.named(wells.stream().map(evidence::nameOf).toList());
  }

  /** What two banks would take off one line in one case. */
  private record Gain(CaseResult result, SharedLine line) {
    double psi() {
      return Optional.of(line)
          .flatMap(SharedLine::staggered)
          .map(s -> line.allOnLoss().toPsi() - s.loss().toPsi())
          .orElse(0.0);
    }
  }
}
