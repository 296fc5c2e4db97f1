package tankyard.engine.checks.site;

import java.util.List;
import java.util.Set;
import tankyard.engine.checks.Check;
import tankyard.engine.checks.Evidence;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.working.Source;

/** What keeps a part of the lease from being worked out, under the survey's own ids. */
public final class DiagnosesCheck implements Check {
  /** Without these a well's oil goes nowhere. */
  private static final Set<String> MUST_BE_MENDED =
      Set.of("pipe-unknown", "no-way-to-separator", "no-oil-afloat");

  private static final Source SOURCE = Source.definition("the lease as drawn");

  @Override
  public String id() {
    return "unfinished";
  }

  @Override
  public Set<String> gives() {
    return Set.of(
        "no-wells",
        "no-separator",
        "no-cases",
        "no-heights",
        "no-way-to-separator",
        "no-water-leg",
        "no-oil-leg",
        "pipe-unknown",
        "no-oil-afloat",
        "gas-in-loop",
        "gas-without-liquid");
  }

  @Override
  public List<Finding> look(Evidence evidence) {
    return evidence.survey().diagnoses().stream().map(DiagnosesCheck::finding).toList();
  }

  private static Finding finding(Diagnosis diagnosis) {
    Severity severity = MUST_BE_MENDED.contains(diagnosis.id()) ? Severity.FIX : Severity.LOOK;
    return Finding.of(diagnosis.id(), severity, diagnosis.thingId(), diagnosis.words(), SOURCE);
  }
}
