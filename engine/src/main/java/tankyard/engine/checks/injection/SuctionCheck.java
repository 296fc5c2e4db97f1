package tankyard.engine.checks.injection;

import java.util.List;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Versus;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.SuctionResult;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Source;

/** With its tank drawn down the pump gets less head than its maker asks for and a margin. */
public final class SuctionCheck implements Check {
  /** Kept above what the maker asks for. */
  private static final double MARGIN_FT = SuctionResult.SPARE.toFeet();

  private static final Source SOURCE =
      Source.memory("plunger pumps: three to five feet above what the maker asks for");

  @Override
  public String id() {
    return "suction-short";
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (SuctionResult suction : result.suctions()) {
        suction
            .needed()
            .filter(n -> suction.available().value().toFeet() < n.toFeet() + MARGIN_FT)
            .ifPresent(
                n ->
                    worst.add(
                        suction.pumpId(),
                        -suction.available().value().toFeet(),
                        () -> finding(evidence, result, suction, n)));
      }
    }
    return worst.findings();
  }

  private Finding finding(
      Evidence evidence, CaseResult result, SuctionResult suction, Length needed) {
    Versus feet =
        Versus.of(suction.available().value().toFeet(), needed.toFeet() + MARGIN_FT, Unit.FOOT, 1);
    return Finding.of(
            id(),
            Severity.FIX,
            suction.pumpId(),
            evidence.nameOf(suction.pumpId())
                + " gets "
                + feet.value()
                + " of head with "
                + evidence.nameOf(suction.tankId())
                + " drawn down to pump-off; its maker's need and a margin ask for "
                + feet.limit()
                + ". "
                + Versus.print(suction.acceleration().value(), Unit.FOOT, 1)
                + " go into speeding the water up.",
            SOURCE)
        .inCase(result.designCase().id())
        .mendedBy(
            "A wider and shorter suction line, straight from the tank; a dampener at the pump.",
            "A higher pump-off level, or the pump set lower.",
            "A slower pump with larger plungers for the same rate.")
        .shownBy(suction.available().working());
  }
}
