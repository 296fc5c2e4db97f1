package tankyard.app.field;

import java.util.List;

/** Entries under one heading, one below the other. */
public record Section<R>(String title, List<Entry<R>> entries) implements Block<R> {
  public Section {
    entries = List.copyOf(entries);
  }

  @Override
  public List<Entry<R>> allEntries() {
    return entries;
  }
}
