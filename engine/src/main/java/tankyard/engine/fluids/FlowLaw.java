package tankyard.engine.fluids;

/**
 * Pressure lost by one liquid on its way through something, as it depends on the flow.
 *
 * <p>Every law keeps the same promises, and one contract test holds them all to it: no flow loses
 * nothing, backward flow loses as much backward (odd), more flow loses more (strictly), no jumps,
 * and {@link Drop#slope} is the slope of {@link Drop#pascals}.
 */
@FunctionalInterface
public interface FlowLaw {
  /**
   * The drop at a flow.
   *
   * @param flowM3PerS positive in the thing's own direction
   */
  Drop drop(double flowM3PerS);

  /** The same flow through both, one after the other. */
  default FlowLaw then(FlowLaw next) {
    return flow -> drop(flow).plus(next.drop(flow));
  }

  /** Pressure that grows with the square of the flow. */
  static FlowLaw quadratic(double pascalsPerSquare) {
    if (!(pascalsPerSquare >= 0)) {
      throw new IllegalArgumentException("A resistance can't be below zero: " + pascalsPerSquare);
    }
    return flow ->
        new Drop(pascalsPerSquare * flow * Math.abs(flow), 2 * pascalsPerSquare * Math.abs(flow));
  }
}
