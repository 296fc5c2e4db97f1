package tankyard.catalogdemo;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;

/**
 * Works printed formulas out with another library than the one that printed them, in binary and not
 * in decimal arithmetic.
 */
final class OtherCalculator {
  private static final MathContext PRINTED = new MathContext(4, RoundingMode.HALF_UP);

  private OtherCalculator() {}

  static double value(String formula, Map<String, Double> inputs) {
    Expression expression =
        new ExpressionBuilder(formula)
            .functions(MIN, MAX)
            .variables(inputs.keySet())
            .build()
            .setVariables(inputs);
    return expression.evaluate();
  }

  /** Whether the number, rounded as workings are, is the printed one. */
  static boolean prints(double value, String printed) {
    return new BigDecimal(value).round(PRINTED).compareTo(new BigDecimal(printed)) == 0;
  }

  private static final Function MIN =
      new Function("min", 2) {
        @Override
        public double apply(double... args) {
          return Math.min(args[0], args[1]);
        }
      };

  private static final Function MAX =
      new Function("max", 2) {
        @Override
        public double apply(double... args) {
          return Math.max(args[0], args[1]);
        }
      };
}
