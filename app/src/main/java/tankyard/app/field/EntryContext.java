package tankyard.app.field;

import java.util.function.Supplier;

/**
 * What every entry of one form shares.
 *
 * @param subject stable name of what the form shows, for merge keys and drafts: "W3"
 * @param name of it in the names of edits, asked each time since it may be the name that is edited
 */
record EntryContext<R>(FormHost<R> host, Drafts drafts, String subject, Supplier<String> name) {
  String key(String entryId) {
    return subject + "/" + entryId;
  }

  /** For example {@code oil of Well 3}. */
  String editName(String label) {
    String of = name.get();
    return of.isBlank() ? small(label) : small(label) + " of " + of;
  }

  /** "Oil" becomes "oil"; "Cv" and "SG" stay. */
  private static String small(String label) {
    boolean isSymbol = label.length() < 3 || Character.isUpperCase(label.charAt(1));
    return isSymbol ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
  }
}
