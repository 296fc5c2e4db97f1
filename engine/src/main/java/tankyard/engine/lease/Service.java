package tankyard.engine.lease;

/** What a line carries. */
public enum Service {
  FLOW_LINE("flow line"),
  OIL_LEG("oil leg"),
  WATER_LEG("water leg"),
  OVERFLOW("overflow"),
  SUCTION("suction line"),
  INJECTION("injection line"),
  /** Water of the lease on its way back to where it is put into a flow line. */
  WATER_RETURN("water return");

  private final String words;

  Service(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
