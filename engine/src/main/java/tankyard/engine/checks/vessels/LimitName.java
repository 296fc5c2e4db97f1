package tankyard.engine.checks.vessels;

import tankyard.engine.checks.Versus;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/** A limit's name and reading in the middle of a sentence. */
final class LimitName {
  private static final int USUAL_DECIMALS = 1;
  private static final int MOST_DECIMALS = 5;

  private LimitName() {}

  /** For example "the crest 1,000 ft out on Water leg", "Well 9's stuffing box". */
  static String of(PressureLimit limit) {
    return limit.name().startsWith("crest") ? "the " + limit.name() : limit.name();
  }

  /** For the middle of a sentence on the gauge: "at most 17.1 psi (Trunk's pipe rating)". */
  static String most(PressureLimit limit) {
    return limit.beyondAnyGauge()
        ? limit.whyNoGauge(Unit.PSI)
        : "at most " + reading(limit) + " (" + limit.name() + ")";
  }

  /** What it sets the gauge to, rounded to its safe side as everywhere else: "17.1 psi". */
  static String reading(PressureLimit limit) {
    return reading(limit.gauge().value().toPsi(), limit.rounding(), USUAL_DECIMALS);
  }

  /** A number the gauge must reach or keep under, told as the limits are: "17.1 psi". */
  static String reading(Pressure limit, Rounding rounding) {
    return reading(limit.toPsi(), rounding, USUAL_DECIMALS);
  }

  /**
   * What the gauge reads against a limit. The limit reads as in the headline unless the two would
   * look the same; then both get the decimals that tell them apart.
   */
  static Versus against(Pressure gauge, PressureLimit limit) {
    double psi = limit.gauge().value().toPsi();
    int places = USUAL_DECIMALS;
    while (places < MOST_DECIMALS
        && Figures.decimals(gauge.toPsi(), places)
            .equals(Figures.decimals(limit.rounding().round(psi, places), places))) {
      places++;
    }
    return new Versus(
        Versus.print(gauge, Unit.PSI, places), reading(psi, limit.rounding(), places));
  }

  private static String reading(double psi, Rounding rounding, int places) {
    return Figures.decimals(rounding.round(psi, places), places) + " " + Unit.PSI.symbol();
  }
}
