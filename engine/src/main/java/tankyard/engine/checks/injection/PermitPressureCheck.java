package tankyard.engine.checks.injection;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.InjectionResult;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.wells.InjectionLaw;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;

/** The wellhead passes its permit while the pump runs, whatever the day's average. */
public final class PermitPressureCheck implements Check {
  private static final Source SOURCE = Source.lease("the permit, as typed; the permit governs");

  /** Psi that differ only by rounding are the same. */
  private static final double SLIP = 1e-9;

  @Override
  public String id() {
    return "injection-over-permit";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (InjectionResult injection : result.injections()) {
        Optional<InjectionWell> well = InjectionWells.of(evidence, injection);
        injection
            .limit()
            .map(Computed::value)
            .filter(limit -> injection.wellhead().value().toPsi() > limit.toPsi() * (1 + SLIP))
            .ifPresent(
                limit ->
                    worst.add(
                        injection.wellId(),
                        injection.wellhead().value().toPsi(),
                        () -> finding(result, injection, well.orElseThrow(), limit)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      CaseResult result, InjectionResult injection, InjectionWell well, Pressure permit) {
    boolean typed = well.permitPressure().isPresent();
    Versus psi = Versus.of(injection.wellhead().value(), permit, Unit.PSI, 0);
    return Finding.of(
            id(),
            typed ? Severity.STOP : Severity.FIX,
            well.id(),
            well.name()
                + " takes "
                + Versus.print(injection.intoWell(), Unit.BARREL_PER_DAY, 0)
                + " while the pump runs at "
                + psi.value()
                + " on its wellhead; "
                + (typed
                    ? "the permit allows "
                    : "no permit is typed, and the screening form gives ")
                + psi.limit()
                + ".",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            slower(well, permit),
            "A second injection well, with its permit asked for now.",
            "A cleaner well face: a job that lowers what it needs for the same rate.")
        .shownBy(injection.wellhead().working());
  }

  private static String slower(InjectionWell well, Pressure permit) {
    InjectionLaw law = new InjectionLaw(well.pressureAtNoFlow(), well.resistance());
    double room = permit.pascals() - law.pascals(0);
    double perRate = law.pascals(1) - law.pascals(0);
    if (room <= 0 || perRate <= 0) {
      return "The well holds more than the permit with nothing going in: ask why before pumping.";
    }
    LiquidRate most =
        LiquidRate.of(Unit.BARREL_PER_DAY.fromSi(room / perRate), Unit.BARREL_PER_DAY);
    return "Slow it by the pump's sheaves to "
        + Versus.print(Math.floor(most.toBarrelsPerDay()), Unit.BARREL_PER_DAY, 0)
        + " and run it longer hours.";
  }
}
