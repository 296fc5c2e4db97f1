package tankyard.engine.catalog;

/** What a pipe, fitting or tank is made of. */
public enum Material {
  POLYETHYLENE("polyethylene"),
  STEEL("steel"),
  PVC("PVC"),
  FIBREGLASS("fibreglass"),
  BRASS("brass"),
  OTHER("other");

  private final String words;

  Material(String words) {
    this.words = words;
  }

  /** Steel and brass stand any heat a lease has; of the rest nobody here knows better. */
  public boolean weakensWithHeat() {
    return this != STEEL && this != BRASS;
  }

  public String words() {
    return words;
  }
}
