package tankyard.app.files;

/** Questions the program must ask before it goes on; tests answer them without a window. */
public interface Dialogs {
  /** What to do with changes that are not saved. */
  enum Unsaved {
    SAVE,
    DROP,
    STAY
  }

  Unsaved askUnsaved(String leaseName);

  /**
   * Asks yes or no.
   *
   * @param yes what the button says that goes on
   */
  boolean ask(String title, String words, String yes);

  /** Says that something went wrong and waits until it was read. */
  void tell(String title, String words);
}
