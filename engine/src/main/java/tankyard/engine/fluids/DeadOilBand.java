package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Temperature;

/**
 * Between what the published correlations for dead oil disagree, so that a guess shows how much of
 * a guess it is. Beside {@link NgEgbogah}:
 *
 * <ul>
 *   <li>Glaso 1980, {@code mu = 3.141e10 T^-3.444 (log10 API)^(10.313 log10 T - 36.447)}: 20 to 48
 *       degAPI, 50 to 300 degF, 26 oils of the North Sea.
 *   <li>Beal 1946 in Standing's form, {@code mu = (0.32 + 1.8e7 / API^4.53) (360 / (T + 200))^a, a
 *       = 10^(0.43 + 8.33 / API)}: 10 to 52 degAPI, 100 to 220 degF.
 *   <li>{@link BeggsRobinsonDead} from 100 degF only: colder, it explodes.
 * </ul>
 *
 * <p>mu in cP, T in degF; constants and ranges as given in an open library. In the cold all of them
 * are asked beyond their ranges, which is the point.
 *
 * @param low cP
 * @param high cP
 */
record DeadOilBand(double low, double high) {
  private static final double BEGGS_ROBINSON_FROM_F = 100;

  /** Glaso's law has no meaning for the heaviest oils, whose log10 API comes near zero. */
  private static final double GLASO_FROM_API = 2;

  static DeadOilBand of(double api, Temperature temperature) {
    double fahrenheit = Math.max(temperature.toFahrenheit(), NgEgbogah.HELD_BELOW_F);
    List<Double> all = new ArrayList<>();
    all.add(NgEgbogah.centipoise(api, fahrenheit));
    all.add(beal(api, fahrenheit));
    if (api > GLASO_FROM_API) {
      all.add(glaso(api, fahrenheit));
    }
    if (fahrenheit >= BEGGS_ROBINSON_FROM_F) {
      all.add(new BeggsRobinsonDead(api).at(temperature).value().toCentipoise());
    }
    return new DeadOilBand(
        all.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
        all.stream().mapToDouble(Double::doubleValue).max().orElseThrow());
  }

  static double glaso(double api, double fahrenheit) {
    double exponent = 10.313 * Math.log10(fahrenheit) - 36.447;
    return 3.141e10 * Math.pow(fahrenheit, -3.444) * Math.pow(Math.log10(api), exponent);
  }

  static double beal(double api, double fahrenheit) {
    double a = Math.pow(10, 0.43 + 8.33 / api);
    return (0.32 + 1.8e7 / Math.pow(api, 4.53)) * Math.pow(360 / (fahrenheit + 200), a);
  }
}
