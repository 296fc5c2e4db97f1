package tankyard.engine.units;

/** What a number measures. Only numbers of one dimension can be compared or converted. */
public enum Dimension {
  LENGTH("length"),
  ELEVATION("elevation"),
  AREA("area"),
  VOLUME("volume"),
  LIQUID_RATE("liquid rate"),
  GAS_RATE("gas rate"),
  PRESSURE("pressure"),
  TEMPERATURE("temperature"),
  VISCOSITY("viscosity"),
  DENSITY("density"),
  GRAVITY("gravity"),
  SPEED("speed"),
  TIME("time"),
  MASS("mass"),
  FORCE("force"),
  POWER("power"),
  FRACTION("fraction"),
  ROTATION("speed of rotation"),
  FLOW_COEFFICIENT("valve coefficient"),
  WELL_RESISTANCE("pressure per rate"),
  HEAT_LOSS("heat loss"),
  VOLTAGE("voltage"),
  CURRENT("current");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /** The trade's word for it, as used in messages. */
  public String words() {
    return words;
  }
}
