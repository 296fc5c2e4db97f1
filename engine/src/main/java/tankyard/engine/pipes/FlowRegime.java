package tankyard.engine.pipes;

/** How the liquid moves through the pipe. */
public enum FlowRegime {
  STILL("standing still"),
  LAMINAR("laminar"),
  TRANSITION("between laminar and turbulent"),
  TURBULENT("turbulent");

  private final String words;

  FlowRegime(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
