package tankyard.engine.network.elements;

/** Pressure a pump adds at a flow. It never grows with the flow. */
public interface PumpGain {

  /**
   * What it adds, and its slope.
   *
   * @param flow m3/s, not below zero
   */
  Gain at(double flow);

  /**
   * Pressure added.
   *
   * @param perFlow how it changes with the flow, Pa/(m3/s); not above zero
   */
  record Gain(double pascals, double perFlow) {}

  /**
   * A curve {@code dp = dp0 - r q^n} (common practice, no source).
   *
   * @param shutOffPa with nothing flowing
   * @param r above zero, Pa/(m3/s)^n
   * @param n one at least
   */
  record Curve(double shutOffPa, double r, double n) implements PumpGain {
    public Curve {
      if (!(shutOffPa > 0 && r > 0 && n >= 1)) {
        throw new IllegalArgumentException(
            "A pump's curve starts above zero and falls: shut off "
                + shutOffPa
                + " Pa, r "
                + r
                + ", n "
                + n);
      }
    }

    /** Through the shut-off pressure and two duties, the second at more flow and less pressure. */
    public static Curve through(double shutOffPa, double q1, double pa1, double q2, double pa2) {
      if (!(0 < q1 && q1 < q2 && shutOffPa > pa1 && pa1 > pa2)) {
        throw new IllegalArgumentException(
            "A pump's curve must fall from its shut-off pressure through both duties");
      }
      double n = Math.log((shutOffPa - pa2) / (shutOffPa - pa1)) / Math.log(q2 / q1);
      return new Curve(shutOffPa, (shutOffPa - pa1) / Math.pow(q1, n), n);
    }

    @Override
    public Gain at(double flow) {
      return new Gain(shutOffPa - r * Math.pow(flow, n), -n * r * Math.pow(flow, n - 1));
    }
  }

  /**
   * Puts the same power into the liquid at any flow, {@code dp = P / q}; below the flow at which
   * that is half the most it can press, the curve goes on along its tangent.
   *
   * @param watts into the liquid
   * @param mostPa with nothing flowing
   */
  record ConstantPower(double watts, double mostPa) implements PumpGain {
    public ConstantPower {
      if (!(watts > 0 && mostPa > 0)) {
        throw new IllegalArgumentException(
            "A pump needs a power and a most pressure above zero, not "
                + watts
                + " W and "
                + mostPa
                + " Pa");
      }
    }

    @Override
    public Gain at(double flow) {
      double least = 2 * watts / mostPa;
      double slope = -watts / (Math.max(flow, least) * Math.max(flow, least));
      return flow >= least ? new Gain(watts / flow, slope) : new Gain(mostPa + slope * flow, slope);
    }
  }
}
