package tankyard.engine.checks.gunbarrel;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelCut;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The nipple on the leg does not reach as far as other liquids ask for. */
public final class TouchyCheck implements Check {
  private static final double NIPPLE_STEP_IN = 3;
  private static final double SLIP_M = 1e-9;
  private static final Source SOURCE =
      Source.commonPractice("gravities off by 0.03, as hydrometers, wells and seasons differ");

  @Override
  public String id() {
    return "gun-barrel-touchy";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.cases().stream()
        .findFirst()
        .map(first -> look(evidence, first))
        .orElse(List.of());
  }

  /** The weir is the same in every case, so one case tells. */
  private List<Finding> look(Evidence evidence, CaseResult first) {
    return first.gunBarrels().stream()
        .filter(
            barrel ->
                barrel.cut().nippleNeeded().value().metres()
                    > nipple(evidence, barrel).metres() + SLIP_M)
        .map(barrel -> finding(evidence, barrel))
        .toList();
  }

  private static Length nipple(Evidence evidence, GunBarrelResult barrel) {
    return evidence
        .lease()
        .thing(barrel.gunBarrelId())
        .map(GunBarrel.class::cast)
        .flatMap(GunBarrel::nipple)
        .orElse(Length.ofFeet(0));
  }

  private Finding finding(Evidence evidence, GunBarrelResult barrel) {
    GunBarrelCut cut = barrel.cut();
    Length has = nipple(evidence, barrel);
    Versus reach = Versus.of(has, cut.nippleNeeded().value(), Unit.INCH, 1);
    double fit =
        Math.ceil(cut.nippleNeeded().value().toInches() / NIPPLE_STEP_IN - 1e-9) * NIPPLE_STEP_IN;
    GunBarrelCut.Drift worst = worst(cut);
    return Finding.of(
            id(),
            Severity.LOOK,
            barrel.gunBarrelId(),
            "An inch of weir moves "
                + evidence.nameOf(barrel.gunBarrelId())
                + "'s interface "
                + Barrels.inches(cut.interfaceForAnInch().value())
                + ". With "
                + worst.liquids()
                + " it goes to "
                + Barrels.feet(worst.interfaceHeight().value())
                + "; to hold it the weir must move "
                + reach.limit()
                + ", and "
                + (has.metres() > 0
                    ? "the nipple reaches " + reach.value() + "."
                    : "it has no nipple."),
            SOURCE)
        .mendedBy(
            "An adjustable nipple that reaches "
                + Versus.print(fit, Unit.INCH, 0)
                + " up and down.")
        .shownBy(cut.nippleNeeded().working());
  }

  /** The liquids that ask for the weir farthest from where it stands. */
  private static GunBarrelCut.Drift worst(GunBarrelCut cut) {
    return cut.drifts().stream()
        .max(
            java.util.Comparator.comparingDouble(
                d -> Math.abs(d.weir().value().metres() - cut.stands().value().metres())))
        .orElseThrow();
  }
}
