package tankyard.engine.checks.lines;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Service;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.LineResult;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.working.Source;

/** The ground gets colder than the oil pours, and nobody typed how strong its gel is. */
public final class GelUnknownCheck implements Check {
  private static final Source SOURCE =
      Source.definition("what is not known neither passes nor fails");

  @Override
  public String id() {
    return "gel-strength-unknown";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Fluids fluids = evidence.lease().fluids();
    if (fluids.gelStrength().isPresent() || fluids.pourPoint().isEmpty()) {
      return List.of();
    }
    double pour = fluids.pourPoint().get().kelvins();
    return evidence.cases().stream()
        .filter(c -> c.lines().stream().anyMatch(l -> gels(l, pour)))
        .findFirst()
        .map(c -> List.of(finding(evidence, c)))
        .orElse(List.of());
  }

  private static boolean gels(LineResult line, double pourK) {
    return line.service() == Service.FLOW_LINE
        && line.oilCarries()
        && line.temperatures().ground().kelvins() < pourK;
  }

  private Finding finding(Evidence evidence, CaseResult result) {
    double ground = result.lines().get(0).temperatures().ground().in(Unit.FAHRENHEIT);
    return Finding.of(
            id(),
            Severity.LOOK,
            "",
            "The ground gets to "
                + tankyard.engine.checks.Versus.print(ground, Unit.FAHRENHEIT, 0)
                + ", and the oil pours down to "
                + UnitSystem.FIELD.print(evidence.lease().fluids().pourPoint().orElseThrow(), 3)
                + ": lines that stand will gel. What starts them again is not checked, since the"
                + " gel's strength is not known.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Have the gel strength measured at the coldest ground, on oil that cooled undisturbed,"
                + " and type it with the fluids.");
  }
}
