package tankyard.engine.fluids;

/**
 * How tightly an emulsion holds its drops of water: the smaller and the better held, the thicker.
 * Each stands for the water share at which the mixture is a hundred times as thick as its oil, the
 * one number in Pal and Rhodes' law. They fitted 0.6 to 0.85; which of those is called loose,
 * medium or tight is common practice, no source.
 */
public enum Tightness {
  LOOSE(0.85),
  MEDIUM(0.75),
  TIGHT(0.65);

  private final double hundredfold;

  Tightness(double hundredfold) {
    this.hundredfold = hundredfold;
  }

  /** Water share at which the mixture is a hundred times as thick as its oil. */
  double hundredfold() {
    return hundredfold;
  }
}
