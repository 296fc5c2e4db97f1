package tankyard.engine.wells;

import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.WellResistance;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * What an injection well asks for at its head: {@code P = P0 + r q}, with q the rate <em>while the
 * pump runs</em>, not the day's average. Tubing friction is inside r.
 *
 * @param atNoFlow gauge pressure it holds with nothing going in
 * @param resistance rise for each unit of rate
 */
public record InjectionLaw(Pressure atNoFlow, WellResistance resistance) {
  private static final Source SOURCE =
      Source.commonPractice("injectivity as a straight line through two tests");

  /** Wellhead gauge pressure, Pa. */
  public double pascals(double flowM3PerS) {
    return atNoFlow.pascals() + resistance.pascalsPerCubicMetrePerSecond() * flowM3PerS;
  }

  public Computed<Pressure> wellhead(LiquidRate running) {
    return Computed.of(
        Pressure.psiFromPascals(pascals(running.cubicMetresPerSecond())),
        () ->
            Working.of(
                "Wellhead pressure while the pump runs",
                "P",
                "P0+r*Q",
                Unit.PSI,
                SOURCE,
                Term.of("P0", "pressure at no flow", atNoFlow, Unit.PSI),
                Term.of("r", "rise with the rate", resistance, Unit.PSI_PER_BARREL_PER_DAY),
                Term.of("Q", "rate while it runs", running, Unit.BARREL_PER_DAY)));
  }

  /** The rate at which the wellhead reaches a limit; none where it holds more than that already. */
  public LiquidRate rateAt(Pressure limit) {
    double room = limit.pascals() - atNoFlow.pascals();
    double slope = resistance.pascalsPerCubicMetrePerSecond();
    if (room > 0 && slope == 0) {
      throw new IllegalArgumentException(
          "A well whose pressure does not rise with the rate never reaches its limit");
    }
    return LiquidRate.ofBarrelsPerDay(room <= 0 ? 0 : Unit.BARREL_PER_DAY.fromSi(room / slope));
  }
}
