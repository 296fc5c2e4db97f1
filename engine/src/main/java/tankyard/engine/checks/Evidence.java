package tankyard.engine.checks;

import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Thing;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Survey;
import tankyard.engine.study.Yard;
import tankyard.engine.window.Window;

/** What the checks look at: everything worked out for one lease. */
public record Evidence(
    Survey survey,
    List<CaseStudy> studies,
    List<CaseResult> cases,
    List<Window> windows,
    Yard yard,
    Optional<Outlook> outlook,
    List<Assumption> assumptions) {
  public Evidence {
    studies = List.copyOf(studies);
    cases = List.copyOf(cases);
    windows = List.copyOf(windows);
    assumptions = List.copyOf(assumptions);
  }

  public Lease lease() {
    return survey.lease();
  }

  /** The name a person gave a thing or line. */
  public String nameOf(String id) {
    return lease()
        .thing(id)
        .map(Thing::name)
        .or(() -> lease().line(id).map(l -> l.name()))
        .orElse(id);
  }
}
