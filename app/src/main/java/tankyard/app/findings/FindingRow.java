package tankyard.app.findings;

import java.util.List;
import java.util.Optional;
import tankyard.engine.checks.Finding;
import tankyard.engine.checks.Severity;
import tankyard.engine.study.Diagnosis;
import tankyard.engine.working.Working;

/**
 * One finding as it is shown.
 *
 * @param id of the check
 * @param thing its name; "the lease" where it is about no single thing
 * @param caseName empty where it holds in every case
 * @param source empty where it is no matter of sources
 */
record FindingRow(
    String id,
    Severity severity,
    String thingId,
    String thing,
    String caseName,
    String words,
    List<String> wayOut,
    String source,
    Optional<Working> working) {

  static FindingRow of(Finding finding, String thing, String caseName) {
    return new FindingRow(
        finding.id(),
        finding.severity(),
        finding.thingId(),
        thing,
        caseName,
        finding.words(),
        finding.wayOut(),
        finding.source().line(),
        finding.working());
  }

  /** What can't be worked out stops the design just as a broken limit does. */
  static FindingRow of(Diagnosis diagnosis, String thing) {
    return new FindingRow(
        diagnosis.id(),
        Severity.STOP,
        diagnosis.thingId(),
        thing,
        "",
        diagnosis.words(),
        List.of(),
        "",
        Optional.empty());
  }

  /** Whether it is the same finding, perhaps with other numbers. */
  boolean isSameMatter(FindingRow other) {
    return id.equals(other.id) && thingId.equals(other.thingId) && caseName.equals(other.caseName);
  }
}
