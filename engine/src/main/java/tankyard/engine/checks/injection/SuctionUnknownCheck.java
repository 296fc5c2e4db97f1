package tankyard.engine.checks.injection;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.NotTyped;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.study.SuctionResult;
import tankyard.engine.units.Unit;

/** Nobody typed what head a pump's maker asks for, so its suction neither passes nor fails. */
public final class SuctionUnknownCheck implements Check {
  @Override
  public String id() {
    return "suction-need-unknown";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.lease().injectionPumps().stream()
        .flatMap(pump -> look(evidence, pump).stream())
        .toList();
  }

  private Optional<Finding> look(Evidence evidence, InjectionPump pump) {
    return evidence.cases().stream()
        .flatMap(c -> c.suctions().stream())
        .filter(s -> s.pumpId().equals(pump.id()) && s.needed().isEmpty())
        .min(Comparator.comparingDouble(s -> s.available().value().metres()))
        .map(s -> finding(evidence, s));
  }

  private Finding finding(Evidence evidence, SuctionResult suction) {
    return Finding.of(
            id(),
            Severity.NOTE,
            suction.pumpId(),
            "Whether "
                + Versus.print(suction.available().value(), Unit.FOOT, 1)
                + " of head are enough for "
                + evidence.nameOf(suction.pumpId())
                + " is not checked: nobody typed what its maker asks for.",
            NotTyped.SOURCE)
        .mendedBy("Type the head its maker asks for at this speed.")
        .shownBy(suction.available().working());
  }
}
