package tankyard.app.field;

import java.util.List;

/** A part of a form under one heading. */
public sealed interface Block<R> permits Section, Rows {
  String title();

  List<Entry<R>> allEntries();

  /** Buttons beside the heading. */
  List<FormAction> actions();
}
