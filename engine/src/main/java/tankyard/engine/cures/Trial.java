package tankyard.engine.cures;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.lease.Lease;
import tankyard.engine.pricing.Bill;
import tankyard.engine.study.CaseResult;
import tankyard.engine.window.Window;

/** Works a lease out as it would be after a change. */
@FunctionalInterface
public interface Trial {
  Worked work(Lease lease);

  /** What a change is judged by. */
  record Worked(List<CaseResult> cases, List<Window> windows, List<Finding> findings, Bill bill) {
    public Worked {
      cases = List.copyOf(cases);
      windows = List.copyOf(windows);
      findings = List.copyOf(findings);
    }

    Optional<Window> window(String separatorId) {
      return windows.stream().filter(w -> w.separatorId().equals(separatorId)).findFirst();
    }

    /** Findings that say that something can't work, spills, breaks or costs. */
    int toMend() {
      return (int)
          findings.stream()
              .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.FIX)
              .count();
    }
  }
}
