package tankyard.engine.checks.gunbarrel;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.Service;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelFall;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;

/** The water can't run to its tank: inlet and line loss stand higher than the weir. */
public final class TankHighCheck implements Check {
  @Override
  public String id() {
    return "gun-barrel-tank-high";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Barrels.cantRun(
        evidence,
        Service.WATER_LEG,
        (designCase, barrel, fall) -> finding(evidence, designCase, barrel, fall));
  }

  private Finding finding(
      Evidence evidence, CaseResult designCase, GunBarrelResult barrel, GunBarrelFall fall) {
    Length weir = barrel.cut().stands().value();
    Versus heights = Versus.of(fall.stands().value(), weir, Unit.FOOT, 2);
    double over = -fall.spare().value().toFeet();
    String name = evidence.nameOf(barrel.gunBarrelId());
    boolean evenWithoutLoss = over > fall.loss().value().toFeet();
    return Finding.of(
            id(),
            Severity.STOP,
            fall.lineId(),
            "At "
                + Barrels.barrels(fall.rate().toBarrelsPerDay())
                + " water backs up to "
                + heights.value()
                + " above "
                + name
                + "'s bottom, to get over "
                + fall.governs()
                + "; the weir stands at "
                + heights.limit()
                + ". "
                + (evenWithoutLoss
                    ? "It can't run at all: nothing pushes it."
                    : "It can't run: water and oil back up inside, and oil goes over the top."),
            Barrels.BY_ITS_FALL)
        .inCase(designCase.designCase().id())
        .mendedBy(ways(barrel, fall, over, name))
        .shownBy(fall.spare().working());
  }

  private static List<String> ways(
      GunBarrelResult barrel, GunBarrelFall fall, double over, String name) {
    List<String> ways = new ArrayList<>();
    double inlet = fall.stands().value().toFeet() - fall.loss().value().toFeet();
    double weir = barrel.cut().stands().value().toFeet();
    barrel.leg().stream()
        .flatMap(leg -> leg.sizes().stream())
        .filter(s -> s.lineLoss().filter(l -> inlet + l.value().toFeet() <= weir).isPresent())
        .findFirst()
        .ifPresent(
            s ->
                ways.add(
                    s.name()
                        + " all the way to the tank: "
                        + Barrels.feet(s.lineLoss().get().value())
                        + " lost in place of "
                        + Barrels.feet(fall.loss().value())
                        + "."));
    String feet = Versus.print(over, Unit.FOOT, 2);
    ways.add("Lower the water tank, or raise " + name + ", by " + feet + " or more.");
    ways.add("A transfer pump for the water.");
    return ways;
  }
}
