package tankyard.engine.fluids;

import java.util.Objects;
import tankyard.engine.units.Temperature;

/** The lease's oil and brine, alone or together, at any temperature. */
public final class FluidModel {
  private final Oil oil;
  private final Brine brine;
  private final EmulsionSpec emulsion;

  public FluidModel(OilSpec oil, BrineSpec brine, EmulsionSpec emulsion) {
    this.oil = new Oil(oil);
    this.brine = new Brine(brine);
    this.emulsion = Objects.requireNonNull(emulsion, "emulsion");
  }

  public LiquidState oil(Temperature temperature) {
    return oil.at(temperature);
  }

  public LiquidState brine(Temperature temperature) {
    return brine.at(temperature);
  }

  /**
   * Oil and water together, by their rates in m3/s. Where nothing flows the line is taken to stand
   * full of brine, the heavier of the two.
   */
  public LiquidState mix(double oilRate, double waterRate, Temperature temperature) {
    if (!(oilRate >= 0 && waterRate >= 0)) {
      throw new IllegalArgumentException(
          "Rates that mix can't be below zero: " + oilRate + ", " + waterRate);
    }
    double all = oilRate + waterRate;
    return mixture(all > 0 ? waterRate / all : 1, temperature);
  }

  /** Oil and water together, by the water's part of the volume. */
  public LiquidState mixture(double waterCut, Temperature temperature) {
    if (!(waterCut >= 0 && waterCut <= 1)) {
      throw new IllegalArgumentException("A water cut lies between 0 and 1: " + waterCut);
    }
    if (waterCut == 0) {
      return oil(temperature);
    }
    if (waterCut == 1) {
      return brine(temperature);
    }
    return new Mixture(oil(temperature), brine(temperature), waterCut, emulsion).state();
  }

  /** Whether the oil carries the water at that share of it, so that the mixture is thick as oil. */
  public boolean oilCarries(double waterCut) {
    return waterCut < emulsion.inversionWaterCut().ratio();
  }
}
