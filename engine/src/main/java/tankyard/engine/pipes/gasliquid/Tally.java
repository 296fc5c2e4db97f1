package tankyard.engine.pipes.gasliquid;

/**
 * What has been gathered on the walk against the flow, Pa; the parts since the last high point that
 * cuts the line are kept apart, because only they count for the pressure upstream.
 */
final class Tally {
  final double airPa;
  double pressurePa;
  double liquidM3;
  double heldPa;
  double lift;
  double friction;
  int steps;
  GasLiquidStep hardest;
  GasLiquidStretch stretch = GasLiquidStretch.NONE;

  Tally(double pressurePa, double airPa) {
    this.pressurePa = pressurePa;
    this.airPa = airPa;
  }

  void add(GasLiquidStep step, double areaM2) {
    Gradient here = step.gradient();
    double length = step.lengthM();
    pressurePa += step.pascals();
    lift += here.liftPaPerM() * length;
    friction += here.frictionPaPerM() * length;
    liquidM3 += here.holdUp() * areaM2 * length;
    stretch = stretch.with(step);
    steps++;
    if (hardest == null || step.pascals() > hardest.pascals()) {
      hardest = step;
    }
  }

  /** Where the fall would draw a vacuum the pressure is the air's, and what lies beyond is cut. */
  boolean cutAtVacuum(double roundingPa) {
    double below = airPa - pressurePa;
    if (below <= roundingPa) {
      pressurePa = Math.max(airPa, pressurePa);
      return false;
    }
    heldPa += below;
    pressurePa = airPa;
    stretch = GasLiquidStretch.NONE;
    return true;
  }
}
