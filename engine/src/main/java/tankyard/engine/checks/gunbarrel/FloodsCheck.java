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

/**
 * More comes than the leg passes with the water up at the oil outlet: the rest leaves with the oil.
 */
public final class FloodsCheck implements Check {
  private static final Source SOURCE =
      Source.definition("columns in balance with the water at the oil outlet, Darcy-Weisbach");

  @Override
  public String id() {
    return "gun-barrel-floods";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Barrels.atSurge(
        evidence,
        (barrel, leg) -> leg.over().toBarrelsPerDay(),
        (designCase, barrel, leg) -> finding(evidence, designCase, barrel, leg));
  }

  private Finding finding(
      Evidence evidence,
      CaseResult designCase,
      GunBarrelResult barrel,
      GunBarrelResult.AtSurge leg) {
    Versus rate = Versus.of(leg.most().value(), barrel.surge().value(), Unit.BARREL_PER_DAY, 0);
    boolean overTheTop = leg.oilSpare().filter(spare -> spare.metres() < 0).isPresent();
    List<String> ways = new ArrayList<>();
    Barrels.size(
            leg,
            size -> size.loss().value().metres() < leg.loss().value().metres(),
            size -> "A leg of " + size.name() + ".")
        .ifPresent(ways::add);
    ways.add("Lower the weir: it leaves more height for the leg, and lowers the interface.");
    ways.add(Barrels.STAGGER);
    return Finding.of(
            id(),
            Severity.STOP,
            barrel.gunBarrelId(),
            evidence.nameOf(barrel.gunBarrelId())
                + "'s leg passes "
                + rate.value()
                + " before the water inside stands at the oil outlet; "
                + rate.limit()
                + " come in "
                + designCase.designCase().name()
                + ". "
                + Barrels.barrels(leg.over().toBarrelsPerDay())
                + " of it leave with the oil"
                + (overTheTop
                    ? ", more than the oil leg takes: oil goes over the top."
                    : ", into the oil tank."),
            SOURCE)
        .inCase(designCase.designCase().id())
        .mendedBy(ways)
        .shownBy(leg.most().working());
  }
}
