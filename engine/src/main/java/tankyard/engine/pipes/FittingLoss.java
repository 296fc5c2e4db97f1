package tankyard.engine.pipes;

/** What one fitting costs: one of the ways the trade writes it down. */
public sealed interface FittingLoss {

  /** The loss in a pipe of that bore. */
  MinorLosses in(double boreM);

  /**
   * K = (L/D) fT, with fT the factor of a clean steel pipe of that bore in full turbulence. Crane
   * TP-410. Too small for thick oil: it holds for turbulent flow.
   */
  record EquivalentDiameters(double lengthOverBore) implements FittingLoss {
    public EquivalentDiameters {
      requireNotNegative(lengthOverBore);
    }

    @Override
    public MinorLosses in(double boreM) {
      return MinorLosses.ofK(lengthOverBore * FullTurbulence.factor(boreM));
    }
  }

  /** So many velocity heads, whatever the bore: entrances, exits. */
  record FixedK(double k) implements FittingLoss {
    public FixedK {
      requireNotNegative(k);
    }

    @Override
    public MinorLosses in(double boreM) {
      return MinorLosses.ofK(k);
    }
  }

  /** So much more pipe of the same bore. */
  record ExtraLength(double metres) implements FittingLoss {
    public ExtraLength {
      requireNotNegative(metres);
    }

    @Override
    public MinorLosses in(double boreM) {
      return MinorLosses.ofExtraLength(metres);
    }
  }

  /**
   * K = k1/Re + ki (1 + kd / D^0.3), D the nominal size in inches; good for thick oil too. Darby
   * 1999 constants. The bore stands in for the nominal size where that is not known.
   */
  record ThreeK(double k1, double ki, double kd, double nominalInches) implements FittingLoss {
    public ThreeK {
      requireNotNegative(k1);
      requireNotNegative(ki);
      requireNotNegative(kd);
      if (!(nominalInches > 0)) {
        throw new IllegalArgumentException("A nominal size must be above zero: " + nominalInches);
      }
    }

    @Override
    public MinorLosses in(double boreM) {
      return new MinorLosses(0, ki * (1 + kd / Math.pow(nominalInches, 0.3)), k1);
    }
  }

  private static void requireNotNegative(double value) {
    if (!(value >= 0)) {
      throw new IllegalArgumentException("A fitting's loss can't be below zero: " + value);
    }
  }
}
