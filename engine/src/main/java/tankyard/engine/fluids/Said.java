package tankyard.engine.fluids;

import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.UnitSystem;

/** Numbers in the words of a caution, in field units. */
final class Said {
  private static final int FIGURES = 4;

  private Said() {}

  static String temperature(Temperature temperature) {
    return UnitSystem.FIELD.print(temperature, FIGURES);
  }

  static String api(double api) {
    return Figures.significant(api, FIGURES) + " °API";
  }

  static String gravity(double specific) {
    return UnitSystem.FIELD.print(specific, Dimension.GRAVITY, FIGURES);
  }

  static String percent(double ratio) {
    return UnitSystem.FIELD.print(ratio, Dimension.FRACTION, FIGURES);
  }
}
