package tankyard.engine.checks.lines;

import java.util.List;
import java.util.stream.Collectors;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineProfile.Stretch;
import tankyard.engine.study.LineResult;
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
        if (!line.partFull().isEmpty() && !fallsFree(evidence, line)) {
          double feet = line.partFull().stream().mapToDouble(PartFullCheck::feet).sum();
          worst.add(line.lineId(), feet, () -> finding(evidence, result, line));
        }
      }
    }
    return worst.findings();
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

  private Finding finding(Evidence evidence, CaseResult result, LineResult line) {
    String where =
        line.partFull().stream().map(PartFullCheck::words).collect(Collectors.joining(" and "));
    return Finding.of(
            id(),
            Severity.NOTE,
            line.lineId(),
            evidence.nameOf(line.lineId())
                + " runs part full "
                + where
                + " of pipe: the fall there pulls nothing, and no siphon is counted on.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy("Put an air vent at the high point, or expect the line to gulp.");
  }

  private static double feet(Stretch stretch) {
    return stretch.to().toFeet() - stretch.from().toFeet();
  }

  private static String words(Stretch stretch) {
    String from = words(stretch.from().toFeet());
    return feet(stretch) < 1
        ? "near " + from + " ft"
        : "from " + from + " to " + words(stretch.to().toFeet()) + " ft";
  }

  private static String words(double feet) {
    return Figures.grouped(Math.rint(feet));
  }
}
