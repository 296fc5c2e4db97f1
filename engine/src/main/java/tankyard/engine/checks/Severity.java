package tankyard.engine.checks;

/** How bad a finding is, worst first. */
public enum Severity {
  STOP("stop"),
  FIX("fix"),
  LOOK("look"),
  NOTE("note");

  private final String words;

  Severity(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
