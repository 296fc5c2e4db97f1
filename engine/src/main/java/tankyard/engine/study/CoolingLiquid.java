package tankyard.engine.study;

import tankyard.engine.fluids.FluidModel;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;

/**
 * How thick one mixture is between the ground's temperature and the warmest (or coldest) well's,
 * read from a table on the logarithm, a degree a step: straight between steps it is right within
 * 0.1 %.
 */
final class CoolingLiquid {
  private static final double STEP_K = 0.5;

  private final FluidModel fluids;
  private final double waterCut;
  private final LiquidState atGround;
  private final double lowestK;
  private final double stepK;
  private final double[] logPaS;

  private CoolingLiquid(
      FluidModel fluids,
      double waterCut,
      LiquidState atGround,
      double lowestK,
      double stepK,
      double[] logPaS) {
    this.fluids = fluids;
    this.waterCut = waterCut;
    this.atGround = atGround;
    this.lowestK = lowestK;
    this.stepK = stepK;
    this.logPaS = logPaS;
  }

  static CoolingLiquid of(
      FluidModel fluids, double waterCut, LiquidState atGround, double lowestK, double highestK) {
    int steps = Math.max(1, (int) Math.ceil((highestK - lowestK) / STEP_K));
    double step = (highestK - lowestK) / steps;
    double[] logs = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      Temperature at = Temperature.of(lowestK + i * step, Unit.KELVIN);
      logs[i] = Math.log(fluids.mixture(waterCut, at).viscosity().value().pascalSeconds());
    }
    return new CoolingLiquid(fluids, waterCut, atGround, lowestK, step, logs);
  }

  /** With its workings and cautions, at any temperature. */
  LiquidState at(double kelvins) {
    return fluids.mixture(waterCut, Temperature.of(kelvins, Unit.KELVIN));
  }

  LiquidState atGround() {
    return atGround;
  }

  double groundK() {
    return atGround.temperature().kelvins();
  }

  double logViscosity(double kelvins) {
    if (stepK == 0) {
      return logPaS[0];
    }
    double at = Math.min(logPaS.length - 1.0, Math.max(0, (kelvins - lowestK) / stepK));
    int below = Math.min(logPaS.length - 2, (int) at);
    return logPaS[below] + (at - below) * (logPaS[below + 1] - logPaS[below]);
  }

  /** The ground's weight with another thickness. */
  Liquid thick(double pascalSeconds) {
    return new Liquid(atGround.liquid().densityKgPerM3(), pascalSeconds);
  }
}
