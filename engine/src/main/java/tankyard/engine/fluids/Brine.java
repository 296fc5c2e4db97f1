package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.numeric.Grid;
import tankyard.engine.numeric.MonotoneCurve;
import tankyard.engine.numeric.NumberTable;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Viscosity;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Produced water from its gravity at 60 degF. The gravity stands for a weight of sodium chloride;
 * table {@code brine.csv} (Spivey-McCain-North 2004 density, Mao-Duan 2009 viscosity; 0 to 25 % by
 * weight, 40 to 200 degF) says how that brine expands and how much thicker than fresh water it is.
 * Both are applied to the fresh-water table, which reaches down to freezing. Brine with much
 * calcium is a little denser for the same weight of salt.
 */
final class Brine {
  private static final NumberTable TABLE = NumberTable.beside(Brine.class, "brine.csv");
  private static final double[] SALT = TABLE.column("nacl_weight_percent");
  private static final double[] FAHRENHEIT = TABLE.column("temperature_f");
  private static final double[] DENSITY = TABLE.column("density_g_per_cc");
  private static final Grid DENSER = ratioToFresh(DENSITY);
  private static final Grid THICKER = ratioToFresh(TABLE.column("viscosity_cp"));
  private static final MonotoneCurve SALT_FOR_GRAVITY = saltForGravity();
  private static final double FRESH = 0.01;
  private static final double FAHRENHEIT_LOW = 40;
  private static final double FAHRENHEIT_HIGH = 200;
  private static final Temperature SIXTY = Temperature.ofFahrenheit(60);
  private static final Source SOURCE =
      Source.published(
          "Spivey, McCain and North 2004 (density) and Mao and Duan 2009 (viscosity) over fresh"
              + " water by IAPWS");

  private final Gravity at60F;
  private final double saltPercent;

  Brine(BrineSpec spec) {
    at60F = spec.gravity();
    saltPercent = SALT_FOR_GRAVITY.at(at60F.specific());
  }

  LiquidState at(Temperature temperature) {
    double fahrenheit = temperature.toFahrenheit();
    double expansion = density(temperature) / density(SIXTY);
    double freshCentipoise = 1e3 * Water.at(temperature).viscosityPaS();
    double thicker = THICKER.at(saltPercent, fahrenheit);
    Computed<Gravity> gravity =
        Computed.of(
            Gravity.of(at60F.specific() * expansion, Unit.SPECIFIC_GRAVITY),
            () -> gravityWorking(expansion));
    Computed<Viscosity> viscosity =
        Computed.of(
            Viscosity.ofCentipoise(freshCentipoise * thicker),
            () -> viscosityWorking(freshCentipoise, thicker));
    return LiquidState.of("brine", temperature, gravity.with(cautions(temperature)), viscosity);
  }

  /** Of the table's brine; only its ratio is used. */
  private double density(Temperature temperature) {
    return Water.at(temperature).densityKgPerM3()
        * DENSER.at(saltPercent, temperature.toFahrenheit());
  }

  private Working gravityWorking(double expansion) {
    return Working.of(
        "Gravity of the brine at this temperature",
        "SG",
        "SG60*x",
        Unit.SPECIFIC_GRAVITY,
        SOURCE,
        Term.of("SG60", "gravity at 60 °F", at60F, Unit.SPECIFIC_GRAVITY),
        Term.number("x", "density here over density at 60 °F, from the table", expansion));
  }

  private Working viscosityWorking(double freshCentipoise, double thicker) {
    return Working.of(
        "Viscosity of the brine",
        "mu",
        "mu0*y",
        Unit.CENTIPOISE,
        SOURCE,
        Term.of("mu0", "fresh water at this temperature", freshCentipoise, Unit.CENTIPOISE),
        Term.number(
            "y",
            "how much thicker, for " + Said.percent(saltPercent / 100) + " salt by weight",
            thicker));
  }

  private List<Caution> cautions(Temperature temperature) {
    List<Caution> said = new ArrayList<>();
    if (!Water.covers(temperature)) {
      said.add(
          new Caution(
              "water-temperature-out-of-range",
              Said.temperature(temperature)
                  + " is outside the 32 to 210 °F of the water table; the value at its end is"
                  + " used."));
    }
    if (at60F.specific() < 0.995 || !SALT_FOR_GRAVITY.covers(Math.max(at60F.specific(), 1))) {
      said.add(
          new Caution(
              "brine-gravity-out-of-range",
              Said.gravity(at60F.specific())
                  + " is outside the 1.0 to 1.192 of the brine table; check the gravity."));
    }
    double fahrenheit = temperature.toFahrenheit();
    if (saltPercent > FRESH && (fahrenheit < FAHRENHEIT_LOW || fahrenheit > FAHRENHEIT_HIGH)) {
      said.add(
          new Caution(
              "brine-salt-ratio-held",
              "At "
                  + Said.temperature(temperature)
                  + " what salt adds to the water's weight and thickness is held as at the end of"
                  + " its table, 40 to 200 °F; near that end the error is small."));
    }
    return said;
  }

  private static Grid ratioToFresh(double[] values) {
    double[] ratio = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      ratio[i] = values[i] / freshAt(FAHRENHEIT[i], values);
    }
    return Grid.of(SALT, FAHRENHEIT, ratio);
  }

  private static double freshAt(double fahrenheit, double[] values) {
    for (int i = 0; i < values.length; i++) {
      if (SALT[i] == 0 && FAHRENHEIT[i] == fahrenheit) {
        return values[i];
      }
    }
    throw new IllegalStateException("brine.csv has no fresh row at " + fahrenheit);
  }

  private static MonotoneCurve saltForGravity() {
    int[] at60 =
        java.util.stream.IntStream.range(0, SALT.length).filter(i -> FAHRENHEIT[i] == 60).toArray();
    double[] gravity = new double[at60.length];
    double[] salt = new double[at60.length];
    for (int k = 0; k < at60.length; k++) {
      gravity[k] = DENSITY[at60[k]] * 1000 / Water.DENSITY_AT_60F;
      salt[k] = SALT[at60[k]];
    }
    return MonotoneCurve.through(gravity, salt);
  }
}
