package tankyard.app.field;

import java.util.List;

/** Entries under one heading, one below the other. */
public record Section<R>(String title, List<Entry<R>> entries, List<FormAction> actions)
    implements Block<R> {
  public Section {
    entries = List.copyOf(entries);
    actions = List.copyOf(actions);
  }

  @Override
  public List<Entry<R>> allEntries() {
    return entries;
  }
}
