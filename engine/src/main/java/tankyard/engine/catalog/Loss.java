package tankyard.engine.catalog;

/** How much a fitting or a hand valve takes off the pressure of what goes through. */
public sealed interface Loss {

  /**
   * As much as a straight pipe of so many diameters (Crane): K is this times the pipe's friction
   * factor at full turbulence. Too little in laminar flow.
   */
  record Diameters(double lengthOverDiameter) implements Loss {
    public Diameters {
      if (!(lengthOverDiameter >= 0)) {
        throw new IllegalArgumentException("L/D can't be less than zero: " + lengthOverDiameter);
      }
    }
  }

  /** So many velocity heads. */
  record VelocityHeads(double k) implements Loss {
    public VelocityHeads {
      if (!(k >= 0)) {
        throw new IllegalArgumentException("K can't be less than zero: " + k);
      }
    }
  }

  /**
   * Darby's three constants: K = k1/Re + ki (1 + kd / Dn^0.3), Dn the nominal size in inches. Holds
   * in laminar flow too.
   */
  record ThreeK(double k1, double ki, double kd) implements Loss {
    public ThreeK {
      if (!(k1 >= 0) || !(ki >= 0) || !(kd >= 0)) {
        throw new IllegalArgumentException(
            "Darby's constants can't be less than zero: " + k1 + ", " + ki + ", " + kd);
      }
    }
  }
}
