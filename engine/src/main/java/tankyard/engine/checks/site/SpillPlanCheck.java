package tankyard.engine.checks.site;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.Shell;
import tankyard.engine.tanks.RoundTank;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/**
 * More tank than the federal spill rule lets go without a plan. Produced-water tanks and gun
 * barrels count.
 */
public final class SpillPlanCheck implements Check {
  static final double PLAN_GALLONS = 1320;
  static final double ENGINEER_GALLONS = 10_000;

  private static final Source SOURCE =
      Source.published("40 CFR 112.1(d)(2)(ii) and 112.3(g); 74 FR 58784 for produced water");

  @Override
  public String id() {
    return "spill-plan";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    double gallons = Shell.of(evidence.lease()).stream().mapToDouble(SpillPlanCheck::gallons).sum();
    return gallons > PLAN_GALLONS ? List.of(finding(gallons)) : List.of();
  }

  private static double gallons(Shell tank) {
    return new RoundTank(tank.diameter())
        .between(Length.ofFeet(0), tank.height())
        .value()
        .in(Unit.GALLON);
  }

  private Finding finding(double gallons) {
    String sign =
        gallons > ENGINEER_GALLONS
            ? "more than 10,000 gal: a licensed engineer must certify it"
            : "an owner with a clean record may be able to certify it";
    return Finding.of(
            id(),
            Severity.NOTE,
            "",
            "The tanks hold "
                + Figures.grouped(gallons)
                + " gal in all, over the 1,320 gal from which the federal rule asks for a written"
                + " spill plan; "
                + sign
                + ".",
            SOURCE)
        .mendedBy("Have the plan before the tanks are filled; state and local rules add to it.");
  }
}
