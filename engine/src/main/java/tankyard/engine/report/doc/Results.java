package tankyard.engine.report.doc;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.checks.Finding;
import tankyard.engine.cures.CureBook;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Thing;
import tankyard.engine.outlook.Outlook;
import tankyard.engine.pricing.Bill;
import tankyard.engine.study.Assumption;
import tankyard.engine.study.CaseResult;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.study.SeparatorChoice;
import tankyard.engine.study.Yard;
import tankyard.engine.window.Window;

/**
 * Everything that was worked out for one lease, as a report needs it.
 *
 * @param cures what would help, one book for each separator; empty where nobody asked
 * @param pipeNames what the catalogue calls each pipe, by id
 * @param date printed on top
 */
@RecordBuilder
public record Results(
    Lease lease,
    List<CaseResult> cases,
    List<Window> windows,
    Yard yard,
    List<SeparatorChoice> choices,
    Optional<Outlook> outlook,
    List<Finding> findings,
    Bill bill,
    List<Diagnosis> diagnoses,
    List<Assumption> assumptions,
    List<CureBook> cures,
    Map<String, String> pipeNames,
    LocalDate date)
    implements ResultsBuilder.With {
  public Results {
    cases = List.copyOf(cases);
    windows = List.copyOf(windows);
    choices = List.copyOf(choices);
    findings = List.copyOf(findings);
    diagnoses = List.copyOf(diagnoses);
    assumptions = List.copyOf(assumptions);
    cures = List.copyOf(cures);
    pipeNames = Map.copyOf(pipeNames);
  }

  /**
   * An answer, ready to print.
   *
   * @param catalog it was worked out with, for the names of pipes
   */
  public static Results of(LeaseAnswer a, Catalog catalog, LocalDate date) {
    Map<String, String> names = new HashMap<>();
    catalog
        .withOwnPipes(a.lease().ownPipes())
        .list(Pipe.class)
        .forEach(p -> names.put(p.id(), p.name()));
    return new Results(
        a.lease(),
        a.cases(),
        a.windows(),
        a.yard(),
        a.choices(),
        a.outlook(),
        a.findings(),
        a.bill(),
        a.diagnoses(),
        a.assumptions(),
        List.of(),
        names,
        date);
  }

  /** What a person calls a thing, a line or a case. */
  public String nameOf(String id) {
    return lease
        .thing(id)
        .map(Thing::name)
        .or(() -> lease.line(id).map(Line::name))
        .or(() -> designCase(id).map(DesignCase::name))
        .orElse(id);
  }

  private Optional<DesignCase> designCase(String id) {
    return lease.cases().stream().filter(c -> c.id().equals(id)).findFirst();
  }

  public String pipeName(String pipeId) {
    return pipeNames.getOrDefault(pipeId, pipeId);
  }
}
