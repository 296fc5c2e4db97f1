package tankyard.engine.valves;

import tankyard.engine.fluids.Liquid;
import tankyard.engine.units.Cv;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;

/**
 * What a back-pressure regulator holds ahead of it. Its spring must be pressed further to let more
 * through, so the pressure climbs from the setting (lock-up: nothing flows) in a straight line with
 * the flow; common practice, no source. Whatever stands behind it does not add, as long as its
 * valve is not wide open: then it is a fixed restriction and the larger of the two holds.
 */
public final class RegulatorLaw {
  private final RegulatorSpec spec;

  public RegulatorLaw(RegulatorSpec spec) {
    this.spec = spec;
  }

  /** How far above the setting at a rate of oil. */
  public Pressure buildUp(LiquidRate oil) {
    if (oil.cubicMetresPerSecond() == 0) {
      return Pressure.ofPsi(0);
    }
    double share =
        spec.fullFlow()
            .map(full -> oil.cubicMetresPerSecond() / full.cubicMetresPerSecond())
            .orElse(1.0);
    return Pressure.ofPsi(spec.buildUp().toPsi() * share);
  }

  /**
   * The gauge pressure ahead of it.
   *
   * @param behind gauge pressure the oil leg needs just after it
   */
  public Pressure ahead(LiquidRate oil, Liquid liquid, Pressure behind) {
    double held = spec.setting().pascals() + buildUp(oil).pascals();
    double open = behind.pascals() + wideOpenPascals(oil, liquid);
    return Pressure.psiFromPascals(Math.max(held, open));
  }

  /** Whether the spring does anything: not where the oil leg needs more than the setting. */
  public boolean rules(LiquidRate oil, Liquid liquid, Pressure behind) {
    double held = spec.setting().pascals() + buildUp(oil).pascals();
    return held > behind.pascals() + wideOpenPascals(oil, liquid);
  }

  private double wideOpenPascals(LiquidRate oil, Liquid liquid) {
    return spec.wideOpen()
        .map((Cv cv) -> ValveLoss.law(cv, liquid).drop(oil.cubicMetresPerSecond()).pascals())
        .orElse(0.0);
  }
}
