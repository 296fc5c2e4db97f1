package tankyard.engine.checks.injection;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** A day's water into a well passes what its permit allows in a day. */
public final class PermitRateCheck implements Check {
  private static final Source SOURCE = Source.lease("the permit, as typed; the permit governs");

  /** Barrels a day that differ only by rounding are the same. */
  private static final double SLIP = 1e-9;

  @Override
  public String id() {
    return "injection-rate-over-permit";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      Map<String, Double> barrels = new LinkedHashMap<>();
      for (InjectionResult injection : result.injections()) {
        barrels.merge(injection.wellId(), aDay(injection), Double::sum);
      }
      for (InjectionWell well : evidence.lease().injectionWells()) {
        double ours = barrels.getOrDefault(well.id(), 0.0);
        double day = ours > 0 ? ours + others(well) : 0;
        well.permitRate()
            .filter(permit -> day > permit.toBarrelsPerDay() * (1 + SLIP))
            .ifPresent(
                permit ->
                    worst.add(
                        well.id(),
                        day - permit.toBarrelsPerDay(),
                        () -> finding(result, well, day, permit)));
      }
    }
    return worst.findings();
  }

  /** What another lease puts in, where the well is shared. */
  private static double others(InjectionWell well) {
    double hours = well.otherHours().orElse(Defaults.OTHER_HOURS).toHours();
    return well.otherRate().map(LiquidRate::toBarrelsPerDay).orElse(0.0) * hours / 24;
  }

  /** The water that has to go, whether or not the pump has hours enough. */
  private static double aDay(InjectionResult injection) {
    return injection.intoWell().toBarrelsPerDay() * injection.hours().value().toDays();
  }

  private Finding finding(CaseResult result, InjectionWell well, double day, LiquidRate permit) {
    Versus rate = Versus.of(day, permit.toBarrelsPerDay(), Unit.BARREL_PER_DAY, 0);
    return Finding.of(
            id(),
            Severity.STOP,
            well.id(),
            well.name()
                + " must take "
                + rate.value()
                + (others(well) > 0 ? " with the other lease's" : "")
                + "; its permit allows "
                + rate.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "Ask for an amended permit or a second injection well before the water grows to it.",
            "Haul or shut in the difference until then.");
  }
}
