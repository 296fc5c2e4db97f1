package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;

/** The walk against the flow: what has been gathered since the end or the last control point. */
final class Climb {
  /** Below this a sum that should be zero is rounding, and no crest, Pa. */
  private static final double ROUNDING = 1e-6;

  private static final int NO_CONTROL = -1;

  private final LineAtFlow line;
  private final Stations stations;
  private final boolean forward;
  private final double downstream;

  /** At each station. */
  private final double[] pressure;

  private final double[] siphon;
  private final List<PartFull> partFull = new ArrayList<>();
  private double gatheredStatic;
  private double gatheredFriction;
  private double slope;

  /** The reach whose upper end governs. */
  private int control = NO_CONTROL;

  private double emptyFrom = Double.NaN;

  Climb(LineAtFlow line, double downstream) {
    this.line = line;
    this.downstream = downstream;
    stations = line.stations();
    forward = line.isForward();
    pressure = new double[stations.reaches() + 1];
    siphon = new double[stations.reaches() + 1];
    int end = forward ? stations.reaches() : 0;
    pressure[end] = downstream;
    siphon[end] = downstream;
  }

  MarchResult result() {
    int n = stations.reaches();
    for (int k = 0; k < n; k++) {
      climb(forward ? n - 1 - k : k);
    }
    if (control != NO_CONTROL) {
      closeEmpty(upper(control));
    }
    return new ClimbedLine(this);
  }

  private void climb(int reach) {
    int lower = lower(reach);
    int upper = upper(reach);
    double rise = forward ? line.staticPascals(reach) : -line.staticPascals(reach);
    double friction = line.frictionPascals(reach);
    siphon[upper] = siphon[lower] + rise + friction;
    gatheredStatic += rise;
    gatheredFriction += friction;
    slope += line.frictionSlope(reach);
    double raw = base() + gatheredStatic + gatheredFriction;
    if (raw < -ROUNDING) {
      openEmpty(lower, upper, raw);
      control = reach;
      gatheredStatic = 0;
      gatheredFriction = 0;
      slope = 0;
    } else {
      closeEmpty(lower);
      pressure[upper] = Math.max(0, raw);
    }
  }

  private int lower(int reach) {
    return forward ? reach + 1 : reach;
  }

  private int upper(int reach) {
    return forward ? reach : reach + 1;
  }

  private double base() {
    return control == NO_CONTROL ? downstream : 0;
  }

  /** Where the pressure falls through nothing on the way up a reach. */
  private void openEmpty(int lower, int upper, double raw) {
    if (Double.isNaN(emptyFrom)) {
      double before = pressure[lower];
      double share = before <= 0 ? 0 : before / (before - raw);
      double from = stations.distanceM(lower);
      emptyFrom = from + share * (stations.distanceM(upper) - from);
    }
  }

  private void closeEmpty(int station) {
    if (!Double.isNaN(emptyFrom)) {
      double other = stations.distanceM(station);
      partFull.add(new PartFull(Math.min(emptyFrom, other), Math.max(emptyFrom, other)));
      emptyFrom = Double.NaN;
    }
  }

  LineAtFlow line() {
    return line;
  }

  double pressure(int station) {
    return pressure[station];
  }

  double siphon(int station) {
    return siphon[station];
  }

  /** The station the flow comes from. */
  int start() {
    return forward ? 0 : stations.reaches();
  }

  double gatheredStatic() {
    return gatheredStatic;
  }

  double gatheredFriction() {
    return gatheredFriction;
  }

  double slope() {
    return slope;
  }

  boolean isCut() {
    return control != NO_CONTROL;
  }

  ControlPoint control() {
    return stations.control(upper(control), control);
  }

  List<PartFull> partFull() {
    return partFull;
  }
}
