package tankyard.app.edit;

/** An edit that can't be done. The message is written for the person who tried it. */
public final class EditRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public EditRefusedException(String words) {
    super(words);
  }
}
