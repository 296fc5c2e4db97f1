package tankyard.engine.pipes.gasliquid;

/** How gas and liquid share the pipe, by the names of Beggs and Brill; as if the pipe lay level. */
public enum FlowPattern {
  LIQUID("liquid only"),
  GAS("gas only"),
  SEGREGATED("segregated: gas over liquid, or a wet wall"),
  TRANSITION("between segregated and intermittent"),
  INTERMITTENT("intermittent: plugs or slugs"),
  DISTRIBUTED("distributed: bubbles or mist");

  private final String words;

  FlowPattern(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
