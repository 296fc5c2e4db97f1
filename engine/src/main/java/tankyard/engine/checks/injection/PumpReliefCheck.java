package tankyard.engine.checks.injection;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.working.Source;

/** An injection pump without a relief valve: it pushes until something breaks. */
public final class PumpReliefCheck implements Check {
  private static final Source SOURCE =
      Source.commonPractice("a plunger pump against a closed valve breaks the weakest thing");

  @Override
  public String id() {
    return "pump-relief-missing";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().injectionPumps().stream()
        .filter(pump -> pump.status().stays() && pump.relief().isEmpty())
        .map(this::finding)
        .toList();
  }

  private Finding finding(InjectionPump pump) {
    return Finding.of(
            id(),
            Severity.FIX,
            pump.id(),
            pump.name()
                + " has no relief valve typed: against a closed valve it pushes until something"
                + " breaks.",
            SOURCE)
        .mendedBy(
            "A relief valve at the pump, piped to the tank, with no valve under it, set below the"
                + " weakest of line, wellhead and pump; type its setting.");
  }
}
