package tankyard.engine.checks.lines;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.study.PipePoint;
import tankyard.engine.units.Figures;
import tankyard.engine.working.Source;

/** A stretch past a high point that runs part full, and so pulls nothing. */
public final class PartFullCheck implements Check {
  private static final Source SOURCE =
      Source.definition("the pressure would fall below the air's: the pipe can't hold full");

  @Override
  public String id() {
    return "part-full-stretch";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (LineResult line : result.lines()) {
        List<PipePoint> empty = partFull(line);
        if (!empty.isEmpty() && !fallsFree(evidence, line)) {
          double feet = feet(empty.get(empty.size() - 1)) - feet(empty.get(0));
          worst.add(line.lineId(), feet, () -> finding(evidence, result, line, empty));
        }
      }
    }
    return worst.findings();
  }

  private static List<PipePoint> partFull(LineResult line) {
    return line.profile().isPartFull()
        ? line.points().stream().filter(PipePoint::partFull).toList()
        : List.of();
  }

  /** What runs off a gun barrel runs part full by design. */
  private static boolean fallsFree(Evidence evidence, LineResult line) {
    return evidence
        .lease()
        .line(line.lineId())
        .flatMap(l -> evidence.lease().thing(l.from()))
        .filter(GunBarrel.class::isInstance)
        .isPresent();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, LineResult line, List<PipePoint> empty) {
    double from = feet(empty.get(0));
    double to = feet(empty.get(empty.size() - 1));
    String where =
        to - from < 1
            ? "near " + words(from) + " ft of pipe"
            : "from " + words(from) + " to " + words(to) + " ft of pipe";
    return Finding.of(
            id(),
            Severity.NOTE,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " runs part full "
                + where
                + ": the fall there pulls nothing, and no siphon is counted on.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy("Put an air vent at the high point, or expect the line to gulp.");
  }

  private static double feet(PipePoint point) {
    return point.distance().toFeet();
  }

  private static String words(double feet) {
    return Figures.grouped(Math.rint(feet));
  }
}
