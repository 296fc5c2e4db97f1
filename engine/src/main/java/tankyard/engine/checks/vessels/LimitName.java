package tankyard.engine.checks.vessels;

import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/** A limit's name and reading in the middle of a sentence. */
final class LimitName {
  private LimitName() {}

  /** For example "the crest 1,000 ft out on Water leg", "Well 9's stuffing box". */
  static String of(PressureLimit limit) {
    return limit.name().startsWith("crest") ? "the " + limit.name() : limit.name();
  }

  /** What it sets the gauge to, rounded to its safe side as everywhere else: "17.1 psi". */
  static String reading(PressureLimit limit) {
    double psi = limit.rounding().round(limit.gauge().value().toPsi(), 1);
    return Figures.decimals(psi, 1) + " " + Unit.PSI.symbol();
  }
}
