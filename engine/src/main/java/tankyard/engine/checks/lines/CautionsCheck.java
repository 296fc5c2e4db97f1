package tankyard.engine.checks.lines;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Several;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.CaseCaution;
import tankyard.engine.study.CaseResult;
import tankyard.engine.working.Source;

/**
 * What the laws say must be read with care, under the cautions' own ids: once for each kind, with
 * the lines or vessels it holds for.
 */
public final class CautionsCheck implements Check {
  /** Here the pressure printed is no answer. */
  private static final String NEAR_SOUND = "gas-near-sound";

  /** Usual wherever cold oil flows, and small beside the line itself. */
  private static final String FITTINGS = "fittings-in-laminar-flow";

  /** A rate now and then passes through it in most lines. */
  private static final String TRANSITION = "flow-in-transition";

  private static final Source SOURCE = Source.definition("the range each law was drawn for");

  @Override
  public String id() {
    return "cautions";
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
        "brine-salt-ratio-held",
        "water-temperature-out-of-range",
        "gas-z-out-of-range",
        "gas-gravity-out-of-range",
        "gas-viscosity-out-of-range",
        "solution-gas-out-of-range",
        "dead-oil-out-of-range",
        "dead-oil-gravity-out-of-range",
        TRANSITION,
        "wall-very-rough",
        FITTINGS,
        "gas-liquid-correlation",
        "gas-liquid-downhill",
        "gas-liquid-no-vacuum",
        "gas-fast",
        NEAR_SOUND,
        "pipe-too-hot",
        "pipe-water-only",
        "pipe-rating-typed-at-73",
        "pipe-heat-unknown",
        "drop-too-fast",
        "retention-guide-cold");
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return CaseCaution.together(evidence.cases()).stream().map(c -> finding(evidence, c)).toList();
  }

  private static Finding finding(Evidence evidence, CaseCaution caution) {
    Finding found =
        Finding.of(
            caution.id(),
            severity(caution.id()),
            caution.things().size() == 1 ? caution.things().get(0) : "",
            words(evidence, caution),
            SOURCE);
    return caseOf(evidence, caution).map(found::inCase).orElse(found);
  }

  private static String words(Evidence evidence, CaseCaution caution) {
    if (caution.things().isEmpty()) {
      return caution.words();
    }
    return Several.named(caution.things().stream().map(evidence::nameOf).toList())
        + ": "
        + caution.words();
  }

  /** Told where its words, with their numbers, are not those of every case. */
  private static Optional<String> caseOf(Evidence evidence, CaseCaution caution) {
    List<CaseResult> same =
        CaseCaution.coldestFirst(evidence.cases()).stream()
            .filter(c -> c.cautions().stream().anyMatch(o -> o.words().equals(caution.words())))
            .toList();
    return same.size() == evidence.cases().size()
        ? Optional.empty()
        : Optional.of(same.get(0).designCase().id());
  }

  private static Severity severity(String id) {
    return switch (id) {
      case NEAR_SOUND -> Severity.FIX;
      case FITTINGS, TRANSITION -> Severity.NOTE;
      default -> Severity.LOOK;
    };
  }
}
