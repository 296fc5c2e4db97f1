package tankyard.engine.window;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * A regulator setting that fits the window: at lock-up, with no oil flowing, the gauge must reach
 * the least; at full flow, built up above its set point, it must not pass the most. It must also
 * stand above what the oil leg needs, or the screw does nothing. One psi of headroom and the next
 * whole psi are common practice; where that does not fit, the next tenth above the least is taken.
 *
 * @param headPsi what the gauge reads more than the regulator holds, from the oil between the two
 */
record Settings(
    Optional<Double> leastPsi,
    Optional<Double> mostPsi,
    double oilNeedPsi,
    double buildUpPsi,
    double headPsi) {
  private static final double HEADROOM_PSI = 1;
  private static final double FINE_PSI = 0.1;
  private static final Source SOURCE =
      Source.commonPractice(
          "one psi above the least, to the next whole psi, build-up below the most");

  private double lowest() {
    return Math.max(leastPsi.map(p -> p - headPsi).orElse(0.0), Math.max(0, oilNeedPsi));
  }

  private double highest() {
    return mostPsi.map(p -> p - headPsi - buildUpPsi).orElse(Double.POSITIVE_INFINITY);
  }

  /** Between the lowest and the highest setting that work; below zero where none does. */
  double roomPsi() {
    return highest() - lowest();
  }

  Optional<Setting> recommended() {
    double usual = Math.ceil(lowest() + HEADROOM_PSI - 1e-9);
    double close = Math.ceil((lowest() - 1e-9) / FINE_PSI) * FINE_PSI;
    if (usual <= highest()) {
      return Optional.of(setting(usual, false));
    }
    return close <= highest() ? Optional.of(setting(close, false)) : Optional.empty();
  }

  Setting typed(Pressure typed) {
    return setting(typed.toPsi(), true);
  }

  private Setting setting(double psi, boolean typed) {
    return new Setting(
        Computed.of(Pressure.ofPsi(psi), () -> working(psi, typed)),
        Pressure.ofPsi(psi + headPsi),
        Pressure.ofPsi(psi + headPsi + buildUpPsi),
        typed,
        psi >= leastPsi.map(p -> p - headPsi).orElse(0.0) - 1e-9 && psi <= highest() + 1e-9);
  }

  private Working working(double psi, boolean typed) {
    if (typed) {
      return Working.of(
          "Regulator setting",
          "S",
          "T",
          Unit.PSI,
          Source.lease("typed in this lease"),
          Term.of("T", "as typed", psi, Unit.PSI));
    }
    double least = leastPsi.orElse(0.0);
    return new Working(
        "Recommended regulator setting",
        "S",
        "max(P-h,o)+a",
        List.of(
            Term.of("P", "least gauge reading", least, Unit.PSI),
            Term.of("h", "oil between regulator and gauge", headPsi, Unit.PSI),
            Term.of("o", "what the oil leg needs", Math.max(0, oilNeedPsi), Unit.PSI),
            Term.of("a", "headroom and rounding up", psi - lowest(), Unit.PSI)),
        Unit.PSI,
        SOURCE,
        List.of());
  }
}
