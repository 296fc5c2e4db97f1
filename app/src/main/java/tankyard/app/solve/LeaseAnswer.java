package tankyard.app.solve;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Finding;
import tankyard.engine.lease.Lease;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.window.Window;

/** All that was worked out for one lease. Gives way to the engine's own answer once it is there. */
public record LeaseAnswer(
    Lease lease,
    List<CaseResult> cases,
    List<Window> windows,
    List<Finding> findings,
    List<Diagnosis> diagnoses,
    List<Assumption> assumptions) {

  public LeaseAnswer {
    cases = List.copyOf(cases);
    windows = List.copyOf(windows);
    findings = List.copyOf(findings);
    diagnoses = List.copyOf(diagnoses);
    assumptions = List.copyOf(assumptions);
  }

  public static LeaseAnswer nothing(Lease lease) {
    return new LeaseAnswer(lease, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  public Optional<CaseResult> caseResult(String caseId) {
    return cases.stream().filter(c -> c.designCase().id().equals(caseId)).findFirst();
  }
}
