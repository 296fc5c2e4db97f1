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
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The leg loses so much at the surge that it lifts the interface far. */
public final class LegSizeCheck implements Check {
  /** What a leg may lose at the surge. */
  static final Length MOST = Length.ofInches(3);

  private static final Source SOURCE =
      Source.commonPractice("a leg that loses no more than 3 in of head at its surge");

  @Override
  public String id() {
    return "gun-barrel-leg-small";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Barrels.atSurge(
        evidence,
        (barrel, leg) -> leg.loss().value().metres() - MOST.metres(),
        (designCase, barrel, leg) -> finding(evidence, designCase, barrel, leg));
  }

  private Finding finding(
      Evidence evidence,
      CaseResult designCase,
      GunBarrelResult barrel,
      GunBarrelResult.AtSurge leg) {
    Versus loss = Versus.of(leg.loss().value(), MOST, Unit.INCH, 1);
    List<String> ways = new ArrayList<>();
    Barrels.size(
            leg,
            size -> size.loss().value().metres() <= MOST.metres(),
            size ->
                "A leg of "
                    + size.name()
                    + ": "
                    + Barrels.inches(size.loss().value())
                    + " lost, interface at "
                    + Barrels.feet(size.interfaceHeight().value())
                    + ".")
        .ifPresent(ways::add);
    ways.add(Barrels.STAGGER);
    return Finding.of(
            id(),
            Severity.FIX,
            barrel.gunBarrelId(),
            evidence.nameOf(barrel.gunBarrelId())
                + "'s leg loses "
                + loss.value()
                + " of head at "
                + Barrels.barrels(barrel.surge().value().toBarrelsPerDay())
                + " in "
                + designCase.designCase().name()
                + ", more than "
                + loss.limit()
                + ": it lifts the interface from "
                + Barrels.feet(barrel.interfaceAtRest().value())
                + " to "
                + Barrels.feet(leg.interfaceHeight().value())
                + ".",
            SOURCE)
        .inCase(designCase.designCase().id())
        .mendedBy(ways)
        .shownBy(leg.loss().working());
  }
}
