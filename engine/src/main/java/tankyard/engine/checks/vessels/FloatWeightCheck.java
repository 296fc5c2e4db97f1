package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Fluids;
import tankyard.engine.lease.Separator;
import tankyard.engine.units.Figures;
import tankyard.engine.working.Source;

/** A float that does not sink in the oil and float in the brine can't work the dump valve. */
public final class FloatWeightCheck implements Check {
  private static final Source SOURCE = Source.definition("buoyancy; gravities at 60 degF as typed");

  @Override
  public String id() {
    return "float-outside-liquids";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Fluids fluids = evidence.lease().fluids();
    return evidence.survey().separators().stream()
        .filter(s -> s.dumpValve().floatBall().isPresent())
        .filter(s -> !liesBetween(weight(s), fluids))
        .map(s -> finding(s, fluids))
        .toList();
  }

  private static double weight(Separator separator) {
    return separator.dumpValve().floatBall().orElseThrow().weight().specific();
  }

  private static boolean liesBetween(double weight, Fluids fluids) {
    return weight > fluids.oil().specific() && weight < fluids.brine().specific();
  }

  private Finding finding(Separator separator, Fluids fluids) {
    double middle = (fluids.oil().specific() + fluids.brine().specific()) / 2;
    return Finding.of(
            id(),
            Severity.FIX,
            separator.id(),
            separator.name()
                + "'s float weighs "
                + words(weight(separator))
                + " against fresh water; it must lie between the oil's "
                + words(fluids.oil().specific())
                + " and the brine's "
                + words(fluids.brine().specific())
                + ", or it never sinks or never rises.",
            SOURCE)
        .mendedBy("Weight it to " + words(middle) + ", midway between the two.");
  }

  private static String words(double gravity) {
    return Figures.decimals(gravity, 3);
  }
}
