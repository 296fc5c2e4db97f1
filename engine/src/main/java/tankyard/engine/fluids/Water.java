package tankyard.engine.fluids;

import tankyard.engine.numeric.MonotoneCurve;
import tankyard.engine.numeric.NumberTable;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Source;

/**
 * Fresh water at one atmosphere, 32 to 210 degF, read from a table of the IAPWS formulations
 * ({@code water.csv}). The viscosity is read on its logarithm.
 */
public final class Water {
  /** kg/m3; API MPMS chapter 11, from memory. The water table gives 999.02. */
  public static final double DENSITY_AT_60F = 999.016;

  /** m/s2, standard acceleration of gravity; exact by definition (3rd CGPM, 1901). */
  public static final double STANDARD_GRAVITY = 9.80665;

  static final Source SOURCE =
      Source.published("IAPWS-IF97 density and IAPWS 2008 viscosity, table in steps of 10 degF");

  private static final double PASCALS_PER_PSI = 6894.757293168361;
  private static final NumberTable TABLE = NumberTable.beside(Water.class, "water.csv");
  private static final double[] FAHRENHEIT = TABLE.column("temperature_f");
  private static final MonotoneCurve DENSITY =
      MonotoneCurve.through(FAHRENHEIT, TABLE.column("density_kg_per_m3"));
  private static final MonotoneCurve LOG_CENTIPOISE = logOf("viscosity_cp");
  private static final MonotoneCurve LOG_VAPOUR_PSIA = logOf("vapour_pressure_psia");

  private Water() {}

  public static boolean covers(Temperature temperature) {
    // The table starts at the triple point's 32.2 degF; freezing is near enough.
    return temperature.toFahrenheit() >= 32 && temperature.toFahrenheit() <= DENSITY.last();
  }

  public static Liquid at(Temperature temperature) {
    double fahrenheit = temperature.toFahrenheit();
    return new Liquid(DENSITY.at(fahrenheit), 1e-3 * Math.exp(LOG_CENTIPOISE.at(fahrenheit)));
  }

  /** Absolute, Pa. */
  public static double vapourPressurePascals(Temperature temperature) {
    return PASCALS_PER_PSI * Math.exp(LOG_VAPOUR_PSIA.at(temperature.toFahrenheit()));
  }

  private static MonotoneCurve logOf(String column) {
    double[] values = TABLE.column(column);
    for (int i = 0; i < values.length; i++) {
      values[i] = Math.log(values[i]);
    }
    return MonotoneCurve.through(FAHRENHEIT, values);
  }
}
