package tankyard.engine.checks.lines;

import java.util.List;
import java.util.Set;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.checks.Worst;
import tankyard.engine.study.CaseResult;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Source;

/** What the laws of the liquids say must be read with care, under the cautions' own ids. */
public final class CautionsCheck implements Check {
  private static final Source SOURCE =
      Source.definition("the range each law of the liquids was drawn for");

  @Override
  public String id() {
    return "liquid-cautions";
  }

  @Override
  public Set<String> gives() {
    return Set.of(
        "oil-viscosity-not-measured",
        "oil-viscosity-one-point",
        "oil-viscosity-extrapolated",
        "oil-viscosity-thin",
        "oil-viscosity-out-of-range",
        "oil-gravity-out-of-range",
        "oil-density-out-of-range",
        "emulsion-near-inversion",
        "emulsion-out-of-range",
        "brine-gravity-out-of-range",
        "water-temperature-out-of-range",
        "gas-z-out-of-range",
        "gas-gravity-out-of-range",
        "gas-viscosity-out-of-range",
        "solution-gas-out-of-range",
        "dead-oil-out-of-range",
        "dead-oil-gravity-out-of-range");
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    Worst worst = new Worst();
    for (CaseResult result : evidence.cases()) {
      for (Caution caution : result.cautions()) {
        worst.add(caution.id(), coldness(result), () -> finding(evidence, result, caution));
      }
    }
    return worst.findings();
  }

  /** Where a caution differs from case to case, the cold one is told: there laws fail. */
  private static double coldness(CaseResult result) {
    return result.lines().stream()
        .mapToDouble(l -> -l.temperatures().ground().kelvins())
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private static Finding finding(Evidence evidence, CaseResult result, Caution caution) {
    Finding found = Finding.of(caution.id(), Severity.LOOK, "", caution.words(), SOURCE);
    boolean always = evidence.cases().stream().allMatch(c -> c.cautions().contains(caution));
    return always ? found : found.inCase(result.designCase().id());
  }
}
