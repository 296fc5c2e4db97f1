package tankyard.app.chart;

/**
 * From values to places along one direction of the screen.
 *
 * @param from place of {@code low}
 * @param to place of {@code high}; smaller than {@code from} where values grow upwards
 */
public record Scale(double low, double high, double from, double to) {

  public static Scale of(Axis axis, double from, double to) {
    return new Scale(axis.low(), axis.high(), from, to);
  }

  public double place(double value) {
    return from + (value - low) / (high - low) * (to - from);
  }

  public double value(double place) {
    return low + (place - from) / (to - from) * (high - low);
  }

  /** The place on a whole pixel's middle, where a thin line is sharp. */
  public double sharp(double value) {
    return Math.floor(place(value)) + 0.5;
  }
}
