package tankyard.engine.pipes.gasliquid;

/**
 * Where the patterns meet, Froude number against the liquid's part of the flow. Beggs and Brill
 * with their revised limits: {@code L1 = 316 l^0.302, L2 = 0.0009252 l^-2.4684, L3 = 0.1 l^-1.4516,
 * L4 = 0.5 l^-6.738}.
 *
 * @param l1 to {@code l4} the limits at one liquid fraction
 */
record PatternMap(double liquidPart, double l1, double l2, double l3, double l4) {

  static PatternMap at(double liquidPart) {
    return new PatternMap(
        liquidPart,
        316 * Math.pow(liquidPart, 0.302),
        9.252e-4 * Math.pow(liquidPart, -2.4684),
        0.10 * Math.pow(liquidPart, -1.4516),
        0.5 * Math.pow(liquidPart, -6.738));
  }

  FlowPattern pattern(double froude) {
    boolean dry = liquidPart < 0.01;
    if (dry ? froude < l1 : froude < l2) {
      return FlowPattern.SEGREGATED;
    }
    if (!dry && froude <= l3) {
      return FlowPattern.TRANSITION;
    }
    double upper = liquidPart < 0.4 ? l1 : l4;
    return !dry && froude <= upper ? FlowPattern.INTERMITTENT : FlowPattern.DISTRIBUTED;
  }

  /** In the transition: 1 at the segregated end, 0 at the intermittent one. */
  double segregatedShare(double froude) {
    return (l3 - froude) / (l3 - l2);
  }
}
