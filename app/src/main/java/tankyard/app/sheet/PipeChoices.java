package tankyard.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Lease;

/** The pipes a person can choose: the catalogue's and the lease's own. */
final class PipeChoices {
  private PipeChoices() {}

  static List<String> pipes(SheetForm sheet, Lease lease) {
    List<String> ids = new ArrayList<>();
    sheet.catalog.withOwnPipes(lease.ownPipes()).list(Pipe.class).forEach(p -> ids.add(p.id()));
    return ids;
  }

  /** The same with none before them. */
  static List<Optional<String>> pipesOrNone(SheetForm sheet, Lease lease) {
    return Stream.concat(
            Stream.of(Optional.<String>empty()), pipes(sheet, lease).stream().map(Optional::of))
        .toList();
  }

  static String words(SheetForm sheet, String id) {
    return sheet
        .catalog
        .withOwnPipes(sheet.lease().ownPipes())
        .item(id)
        .map(CatalogItem::name)
        .orElse(id.isEmpty() ? "none chosen" : id + " (not in the catalogue)");
  }
}
