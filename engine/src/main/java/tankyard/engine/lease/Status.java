package tankyard.engine.lease;

/** Whether a thing must be bought, is there already, or goes away. */
public enum Status {
  NEW("new"),
  HAVE("have it"),
  REMOVE("remove");

  private final String words;

  Status(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** Whether it is part of the battery once the work is done. */
  public boolean stays() {
    return this != REMOVE;
  }
}
