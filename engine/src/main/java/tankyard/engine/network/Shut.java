package tankyard.engine.network;

/** A valve that somebody closed: as good as no run at all. */
public enum Shut implements Link {
  VALVE;

  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    throw new IllegalStateException("Nothing flows through a shut valve");
  }
}
