package tankyard.engine.catalog;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import tankyard.engine.units.Temperature;

/** Factors on a rating at 73 degF, straight lines between the temperatures of a table. */
final class TemperatureFactors {
  private final PolynomialSplineFunction factor;
  private final double[] fahrenheit;

  TemperatureFactors(double[] fahrenheit, double[] factors) {
    this.fahrenheit = fahrenheit.clone();
    factor = new LinearInterpolator().interpolate(fahrenheit, factors);
  }

  /** Cold gives no credit: below the table's first temperature its factor holds. Hot gives none. */
  double at(Temperature pipe) {
    double t = pipe.toFahrenheit();
    if (isTooHot(pipe)) {
      return 0;
    }
    return factor.value(Math.max(t, fahrenheit[0]));
  }

  boolean isTooHot(Temperature pipe) {
    return pipe.toFahrenheit() > hottest();
  }

  double hottest() {
    return fahrenheit[fahrenheit.length - 1];
  }
}
