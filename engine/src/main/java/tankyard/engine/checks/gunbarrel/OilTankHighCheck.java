package tankyard.engine.checks.gunbarrel;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Service;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** The oil can't run to its tank: inlet and line loss stand higher than the oil outlet. */
public final class OilTankHighCheck implements Check {
  @Override
  public String id() {
    return "gun-barrel-oil-tank-high";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Barrels.cantRun(
        evidence,
        Service.OIL_LEG,
        (designCase, barrel, fall) -> finding(evidence, designCase, barrel, fall));
  }

  private Finding finding(
      Evidence evidence, CaseResult designCase, GunBarrelResult barrel, GunBarrelFall fall) {
    Length outlet =
        evidence
            .lease()
            .thing(barrel.gunBarrelId())
            .map(GunBarrel.class::cast)
            .map(GunBarrel::oilOutletHeight)
            .orElseThrow();
    Versus heights = Versus.of(fall.stands().value(), outlet, Unit.FOOT, 2);
    String name = evidence.nameOf(barrel.gunBarrelId());
    String over = Versus.print(-fall.spare().value().toFeet(), Unit.FOOT, 2);
    return Finding.of(
            id(),
            Severity.STOP,
            fall.lineId(),
            "Oil must stand at "
                + heights.value()
                + " above "
                + name
                + "'s bottom to get over "
                + fall.governs()
                + "; its outlet is at "
                + heights.limit()
                + ". The oil fills the vessel up to there and pushes the water down.",
            Barrels.BY_ITS_FALL)
        .inCase(designCase.designCase().id())
        .mendedBy(
            "Lower the oil tank's inlet, or raise " + name + ", by " + over + " or more.",
            "A bigger oil leg, if the loss is most of it: "
                + Barrels.feet(fall.loss().value())
                + " now.")
        .shownBy(fall.spare().working());
  }
}
