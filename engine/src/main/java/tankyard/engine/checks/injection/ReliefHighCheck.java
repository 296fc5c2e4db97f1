package tankyard.engine.checks.injection;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** A pump's relief valve opens only when its well is past its limit already. */
public final class ReliefHighCheck implements Check {
  private static final Source SOURCE =
      Source.definition("the gauge reading at which the wellhead is at its limit");

  @Override
  public String id() {
    return "pump-relief-high";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().injectionPumps().stream()
        .filter(pump -> pump.status().stays())
        .flatMap(pump -> look(evidence, pump).stream())
        .toList();
  }

  private Optional<Finding> look(Evidence evidence, InjectionPump pump) {
    return evidence.cases().stream()
        .flatMap(c -> c.injections().stream())
        .filter(i -> i.pumpId().equals(pump.id()))
        .flatMap(i -> i.redLine().stream())
        .min(Comparator.comparingDouble(line -> line.value().pascals()))
        .filter(line -> pump.relief().filter(r -> above(r, line)).isPresent())
        .map(line -> finding(pump, line));
  }

  private static boolean above(Pressure relief, Computed<Pressure> line) {
    return relief.pascals() > line.value().pascals();
  }

  private Finding finding(InjectionPump pump, Computed<Pressure> line) {
    Versus psi = Versus.of(pump.relief().orElseThrow(), line.value(), Unit.PSI, 0);
    return Finding.of(
            id(),
            Severity.LOOK,
            pump.id(),
            pump.name()
                + "'s relief valve opens at "
                + psi.value()
                + "; its well is at its limit at "
                + psi.limit()
                + " on the pump's gauge. Nothing stops the pump between the two.",
            SOURCE)
        .mendedBy(
            "A high-pressure switch at the red line that stops the pump.",
            "A relief valve set lower, but above what the pump needs while it runs.")
        .shownBy(line.working());
  }
}
