package tankyard.engine.checks;

import java.util.List;
import java.util.Optional;
import tankyard.engine.working.Source;
import tankyard.engine.working.Working;

/**
 * Something a person should know: which thing, in which case, the number against its limit, and the
 * way out.
 *
 * @param id of the check, stable: {@code overflow-too-small}
 * @param thingId the thing or line it is about; empty where it is the whole lease
 * @param caseId empty where it holds in every case
 * @param words one sentence naming the thing, the value and the limit
 * @param wayOut what would mend it, best first
 * @param working of the number, where there is one
 */
public record Finding(
    String id,
    Severity severity,
    String thingId,
    Optional<String> caseId,
    String words,
    List<String> wayOut,
    Source source,
    Optional<Working> working) {
  public Finding {
    wayOut = List.copyOf(wayOut);
  }

  /** A finding that holds in every case, with nothing to mend it yet. */
  public static Finding of(
      String id, Severity severity, String thingId, String words, Source source) {
    return new Finding(
        id, severity, thingId, Optional.empty(), words, List.of(), source, Optional.empty());
  }

  /** The same, in the case of that id. */
  public Finding inCase(String where) {
    return new Finding(id, severity, thingId, Optional.of(where), words, wayOut, source, working);
  }

  /** The same, with what would mend it, best first. */
  public Finding mendedBy(List<String> ways) {
    return new Finding(id, severity, thingId, caseId, words, ways, source, working);
  }

  /** The same, with what would mend it, best first. */
  public Finding mendedBy(String... ways) {
    return mendedBy(List.of(ways));
  }

  /** The same, with the working of its number. */
  public Finding shownBy(Working shown) {
    return new Finding(id, severity, thingId, caseId, words, wayOut, source, Optional.of(shown));
  }
}
