package tankyard.engine.checks.gunbarrel;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The downcomer and its tee can't swallow the surge and let air back past it. */
public final class DowncomerCheck implements Check {
  private static final Source SOURCE =
      Source.memory("self-venting drain, Froude number 0.31, against the surge");

  @Override
  public String id() {
    return "gun-barrel-downcomer-small";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Barrels.atSurge(
        evidence,
        (barrel, leg) ->
            barrel.surge().value().toBarrelsPerDay() - leg.downcomer().value().toBarrelsPerDay(),
        (designCase, barrel, leg) -> finding(evidence, designCase, barrel, leg));
  }

  private Finding finding(
      Evidence evidence,
      CaseResult designCase,
      GunBarrelResult barrel,
      GunBarrelResult.AtSurge leg) {
    double surge = barrel.surge().value().toBarrelsPerDay();
    double swallows = leg.downcomer().value().toBarrelsPerDay();
    Versus rate = Versus.of(swallows, surge, Unit.BARREL_PER_DAY, 0);
    List<String> ways = new ArrayList<>();
    Barrels.size(
            leg,
            size -> size.downcomer().value().toBarrelsPerDay() >= surge,
            size ->
                "Tee and downcomer of "
                    + size.name()
                    + ": "
                    + Barrels.barrels(size.downcomer().value().toBarrelsPerDay())
                    + ".")
        .ifPresent(ways::add);
    ways.add(
        "Hold the surge to "
            + Barrels.barrels(Math.floor(swallows))
            + ": stagger the wells' timers.");
    return Finding.of(
            id(),
            Severity.FIX,
            barrel.gunBarrelId(),
            evidence.nameOf(barrel.gunBarrelId())
                + "'s downcomer swallows "
                + rate.value()
                + " and still lets air back; "
                + rate.limit()
                + " come in "
                + designCase.designCase().name()
                + ". Run full it pulls the leg down like a siphon, or the tee floods and backs up"
                + " the vessel.",
            SOURCE)
        .inCase(designCase.designCase().id())
        .mendedBy(ways)
        .shownBy(leg.downcomer().working());
  }
}
