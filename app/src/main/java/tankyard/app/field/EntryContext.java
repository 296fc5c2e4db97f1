package tankyard.app.field;

/**
 * What every entry of one form shares.
 *
 * @param subject stable name of what the form shows, for merge keys and drafts: "well-3"
 * @param name of it in the names of edits: "Well 3"
 */
record EntryContext<R>(FormHost<R> host, Drafts drafts, String subject, String name) {
  String key(String entryId) {
    return subject + "/" + entryId;
  }

  String editName(String label) {
    return name.isBlank() ? label : label + " of " + name;
  }
}
