package tankyard.engine.study;

import java.util.List;

/**
 * Gas and liquid through a line as one would do it with a calculator, in field units: Beggs and
 * Brill's equations with Payne's factors typed a second time, from the formulas and not from the
 * engine, and plain steps of a foot with the gradient of their lower end. Nothing of the engine's
 * gas laws is used: z is Brill and Beggs', the friction factor goes round Colebrook's equation.
 *
 * @param bore in
 * @param roughness in
 * @param liquid bbl/d
 * @param liquidDensity lb/ft3
 * @param liquidViscosity cP
 * @param oil bbl/d
 * @param gas Mcf/d, all of it
 * @param gasGravity air 1
 * @param api of the oil
 * @param fahrenheit everywhere
 */
record HandMarch(
    double bore,
    double roughness,
    double liquid,
    double liquidDensity,
    double liquidViscosity,
    double oil,
    double gas,
    double gasGravity,
    double api,
    double fahrenheit) {
  private static final double G = 32.17405;

  /** Standard atmosphere of 1976 at 1,000 ft. */
  static final double AIR_PSIA = 14.1726;

  private static final double DYN_PER_CM = 25;
  private static final double GAS_CENTIPOISE = 0.0105;

  /** One station: feet along the line, feet up. */
  record Station(double along, double up) {}

  /** psia at the first station, from that at the last. */
  double upstream(List<Station> stations, double psia) {
    double p = psia;
    for (int i = stations.size() - 1; i > 0; i--) {
      Station lower = stations.get(i);
      Station upper = stations.get(i - 1);
      double length = lower.along() - upper.along();
      double sine = (lower.up() - upper.up()) / length;
      int steps = (int) Math.ceil(length);
      for (int k = 0; k < steps; k++) {
        p += gradient(p, sine) * length / steps;
      }
    }
    return p;
  }

  /** psi per ft. */
  double gradient(double psia, double sine) {
    double area = Math.PI / 4 * Math.pow(bore / 12, 2);
    double vl = liquid * 5.614583 / 86400 / area;
    double held = standing(psia) - standing(AIR_PSIA);
    double free = Math.max(0, gas * 1000 - oil * held);
    double rankine = fahrenheit + 459.67;
    double z = z(psia, rankine);
    double vg = free * 14.696 / psia * z * rankine / 519.67 / 86400 / area;
    double rg = 28.964 * gasGravity * psia / (z * 10.73158 * rankine);
    return gradient(vl, vg, rg, GAS_CENTIPOISE, psia, sine, DYN_PER_CM, true);
  }

  /** The same for given superficial velocities, ft/s. */
  double gradient(
      double vl,
      double vg,
      double rg,
      double gasViscosity,
      double psia,
      double sine,
      double tension,
      boolean payne) {
    double v = vl + vg;
    double part = vl / v;
    double froude = v * v / (G * bore / 12);
    double number = 1.938 * vl * Math.pow(liquidDensity / tension, 0.25);
    double h = holdUp(part, froude, number, sine, payne);
    double slipping = liquidDensity * h + rg * (1 - h);
    double even = liquidDensity * part + rg * (1 - part);
    double thick = liquidViscosity * part + gasViscosity * (1 - part);
    double reynolds = 1488 * even * v * bore / 12 / thick;
    double y = part / (h * h);
    double x = Math.log(y);
    double s =
        y > 1 && y < 1.2
            ? Math.log(2.2 * y - 1.2)
            : x / (-0.0523 + 3.182 * x - 0.8725 * x * x + 0.01853 * Math.pow(x, 4));
    double factor = colebrook(reynolds) * Math.exp(s);
    double friction = factor * even * v * v / (2 * G * bore / 12) / 144;
    double speeding = slipping * v * vg / (G * psia * 144);
    return (slipping * sine / 144 + friction) / (1 - speeding);
  }

  private static double holdUp(
      double part, double froude, double number, double sine, boolean payne) {
    double l2 = 0.0009252 * Math.pow(part, -2.4684);
    double l3 = 0.1 * Math.pow(part, -1.4516);
    double l1 = 316 * Math.pow(part, 0.302);
    double l4 = 0.5 * Math.pow(part, -6.738);
    double up =
        inclined(0.98, 0.4846, 0.0868, 0.011, -3.768, 3.539, -1.614)
            .at(part, froude, number, sine, payne);
    double slugs =
        inclined(0.845, 0.5351, 0.0173, 2.96, 0.305, -0.4473, 0.0978)
            .at(part, froude, number, sine, payne);
    if (froude < l2) {
      return up;
    }
    if (froude <= l3) {
      double a = (l3 - froude) / (l3 - l2);
      return a * up + (1 - a) * slugs;
    }
    if (froude <= (part < 0.4 ? l1 : l4)) {
      return slugs;
    }
    throw new IllegalStateException("distributed flow is not done by hand here");
  }

  private static Pattern inclined(
      double a, double b, double c, double d, double e, double f, double g) {
    return new Pattern(a, b, c, d, e, f, g);
  }

  /** The seven constants of a pattern. */
  private record Pattern(double a, double b, double c, double d, double e, double f, double g) {
    double at(double part, double froude, double number, double sine, boolean payne) {
      double level = Math.max(part, a * Math.pow(part, b) / Math.pow(froude, c));
      double angle = Math.asin(sine);
      double log =
          sine >= 0
              ? d * Math.pow(part, e) * Math.pow(number, f) * Math.pow(froude, g)
              : 4.7
                  * Math.pow(part, -0.3692)
                  * Math.pow(number, 0.1244)
                  * Math.pow(froude, -0.5056);
      double c0 = Math.max(0, (1 - part) * Math.log(log));
      double slope = Math.sin(1.8 * angle);
      double psi = 1 + c0 * (slope - Math.pow(slope, 3) / 3);
      double held = level * psi;
      if (!payne) {
        return held;
      }
      return Math.max(part, (sine > 0 ? 0.924 : 0.685) * held);
    }
  }

  private double colebrook(double reynolds) {
    double f = 0.02;
    for (int i = 0; i < 60; i++) {
      f = Math.pow(-2 * Math.log10(roughness / bore / 3.7 + 2.51 / (reynolds * Math.sqrt(f))), -2);
    }
    return f;
  }

  private double standing(double psia) {
    double warm = Math.pow(10, 0.0125 * api - 0.00091 * fahrenheit);
    return gasGravity * Math.pow((psia / 18.2 + 1.4) * warm, 1.2048);
  }

  /** Brill and Beggs 1974. */
  private double z(double psia, double rankine) {
    double tr = rankine / (169.2 + 349.5 * gasGravity - 74 * gasGravity * gasGravity);
    double pr = psia / (756.8 - 131 * gasGravity - 3.6 * gasGravity * gasGravity);
    double a = 1.39 * Math.sqrt(tr - 0.92) - 0.36 * tr - 0.101;
    double b =
        (0.62 - 0.23 * tr) * pr
            + (0.066 / (tr - 0.86) - 0.037) * pr * pr
            + 0.32 * Math.pow(pr, 6) / Math.pow(10, 9 * (tr - 1));
    double c = 0.132 - 0.32 * Math.log10(tr);
    double d = Math.pow(10, 0.3106 - 0.49 * tr + 0.1824 * tr * tr);
    return a + (1 - a) / Math.exp(b) + c * Math.pow(pr, d);
  }
}
