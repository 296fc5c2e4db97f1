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

  public String words() {
    return words;
  }
}
