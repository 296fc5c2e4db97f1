package tankyard.engine.api;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Finding;
import tankyard.engine.lease.Lease;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.pricing.Bill;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.study.SeparatorChoice;
import tankyard.engine.study.Yard;
import tankyard.engine.window.Window;

/**
 * Everything worked out for one lease.
 *
 * @param lease it was worked out for
 * @param cases in the lease's order, each with the separators' gauges at their setting
 * @param windows one for each separator
 * @param yard what is the same in every case
 * @param choices which of the catalogue's separators would do
 * @param outlook what runs out next, where the lease says that its water grows
 * @param findings worst first
 * @param diagnoses what could not be worked out and why
 * @param assumptions values nobody typed
 */
public record LeaseAnswer(
    Lease lease,
    List<CaseResult> cases,
    List<Window> windows,
    Yard yard,
    List<SeparatorChoice> choices,
    Optional<Outlook> outlook,
    List<Finding> findings,
    Bill bill,
    List<Diagnosis> diagnoses,
    List<Assumption> assumptions) {
  public LeaseAnswer {
    cases = List.copyOf(cases);
    windows = List.copyOf(windows);
    choices = List.copyOf(choices);
    findings = List.copyOf(findings);
    diagnoses = List.copyOf(diagnoses);
    assumptions = List.copyOf(assumptions);
  }

  public Optional<CaseResult> designCase(String id) {
    return cases.stream().filter(c -> c.designCase().id().equals(id)).findFirst();
  }

  public Optional<Window> window(String separatorId) {
    return windows.stream().filter(w -> w.separatorId().equals(separatorId)).findFirst();
  }
}
