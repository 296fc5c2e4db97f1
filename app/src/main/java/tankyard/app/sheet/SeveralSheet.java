package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import tankyard.app.edit.SetStatus;
import tankyard.app.field.Fields;
import tankyard.app.field.Part;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;

/** What several picked things have in common. */
final class SeveralSheet {
  private SeveralSheet() {}

  static void fill(SheetForm sheet, List<String> ids) {
    sheet.form.section("");
    Fields<Lease, Lease> fields = sheet.form.on("several", LeasePlaces.whole(), Lease.class);
    Part<Lease, Optional<Status>> status =
        new Part<>(
            lease -> common(lease, ids),
            (lease, chosen) -> chosen.map(s -> SetStatus.of(ids, s).apply(lease)).orElse(lease));
    List<Optional<Status>> choices = Arrays.stream(Status.values()).map(Optional::of).toList();
    fields.choice(
        "status",
        "Status",
        "New things are bought, what is there is not, and what goes is only taken out.",
        status,
        lease -> choices,
        s -> s.map(Status::words).orElse("mixed"));
  }

  /** For example {@code 3 wells, 1 tee}. */
  static String count(Lease lease, List<String> ids) {
    Map<String, Integer> kinds = new TreeMap<>();
    ids.forEach(id -> kind(lease, id).ifPresent(k -> kinds.merge(k, 1, Integer::sum)));
    List<String> words = new ArrayList<>();
    kinds.forEach((kind, n) -> words.add(n + " " + kind + (n == 1 ? "" : "s")));
    return String.join(", ", words);
  }

  private static Optional<String> kind(Lease lease, String id) {
    return lease.thing(id).map(Thing::kind).or(() -> lease.line(id).map(Line::kind));
  }

  private static Optional<Status> common(Lease lease, List<String> ids) {
    List<Status> statuses =
        ids.stream()
            .flatMap(
                id ->
                    Stream.concat(
                        lease.thing(id).map(Thing::status).stream(),
                        lease.line(id).map(Line::status).stream()))
            .distinct()
            .toList();
    return statuses.size() == 1 ? Optional.of(statuses.get(0)) : Optional.empty();
  }
}
