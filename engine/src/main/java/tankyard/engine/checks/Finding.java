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
}
