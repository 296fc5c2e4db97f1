package tankyard.app.solve;

/** Whether the results on the screen belong to the lease on the screen. */
public enum Freshness {
  /** They belong to this very lease. */
  CURRENT("results are current"),
  /** The lease has changed and is being worked out again. */
  SOLVING("working it out"),
  /** The lease has changed and nobody is working on it: live working-out is switched off. */
  STALE("results are of an earlier lease"),
  /** It could not be worked out. */
  FAILED("could not be worked out");

  private final String words;

  Freshness(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
