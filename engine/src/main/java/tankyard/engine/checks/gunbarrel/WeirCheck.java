package tankyard.engine.checks.gunbarrel;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.GunBarrelResult;
import tankyard.engine.units.FeetInches;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** The weir as cut puts the interface out of the vessel, even with nothing running. */
public final class WeirCheck implements Check {
  private static final Source SOURCE = Source.definition("columns in balance, same air above both");

  @Override
  public String id() {
    return "gun-barrel-weir-off";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return Barrels.each(
        evidence,
        (designCase, barrel, worst) ->
            barrel.interfaceAtRest().cautions().stream()
                .findFirst()
                .ifPresent(
                    caution ->
                        worst.add(
                            barrel.gunBarrelId(),
                            Math.abs(offM(barrel)),
                            () -> finding(evidence, designCase, barrel, caution.words()))));
  }

  private static double offM(GunBarrelResult barrel) {
    Length stands = barrel.cut().stands().value();
    return stands.metres() - barrel.cut().weir().value().metres();
  }

  private Finding finding(
      Evidence evidence, CaseResult designCase, GunBarrelResult barrel, String caution) {
    Versus weirs =
        Versus.of(barrel.cut().stands().value(), barrel.cut().weir().value(), Unit.FOOT, 2);
    return Finding.of(
            id(),
            Severity.STOP,
            barrel.gunBarrelId(),
            evidence.nameOf(barrel.gunBarrelId())
                + "'s weir stands at "
                + weirs.value()
                + "; for the interface wanted it belongs at "
                + weirs.limit()
                + ". "
                + caution,
            SOURCE)
        .inCase(designCase.designCase().id())
        .mendedBy("Cut the weir at " + FeetInches.print(barrel.cut().cut().value()) + ".")
        .shownBy(barrel.interfaceAtRest().working());
  }
}
