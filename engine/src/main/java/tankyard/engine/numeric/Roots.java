package tankyard.engine.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;

/** Where a continuous function crosses zero between two points of opposite sign. */
public final class Roots {
  private static final double RELATIVE = 1e-15;
  private static final double ABSOLUTE = 1e-15;
  private static final int ORDER = 5;
  private static final int MOST_STEPS = 200;

  private Roots() {}

  /**
   * The crossing between {@code low} and {@code high}.
   *
   * @param what is sought, for the message
   * @throws IllegalArgumentException where both ends have the same sign
   */
  public static double between(String what, DoubleUnaryOperator f, double low, double high) {
    try {
      return new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, ORDER)
          .solve(MOST_STEPS, f::applyAsDouble, low, high);
    } catch (NoBracketingException e) {
      throw new IllegalArgumentException(
          "No " + what + " between " + low + " and " + high + " fits", e);
    }
  }
}
