package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The walk against the flow: what has been gathered since the end or the last control point. */
final class Climb {
  /** Below this a sum that should be zero is rounding, and no crest, Pa. */
  private static final double ROUNDING = 1e-6;

  private final double downstream;
  private final List<Double> pressures = new ArrayList<>();
  private final List<Double> siphon = new ArrayList<>();
  private final List<PartFull> partFull = new ArrayList<>();
  private double gatheredStatic;
  private double gatheredFriction;
  private double slope;
  private ControlPoint control;
  private double emptyFrom = Double.NaN;

  Climb(double downstream) {
    this.downstream = downstream;
    pressures.add(downstream);
    siphon.add(downstream);
  }

  double pressure(int step) {
    return pressures.get(step);
  }

  double siphonPressure(int step) {
    return siphon.get(step);
  }

  void climb(Reach reach, boolean forward) {
    double rise = forward ? reach.staticPascals() : -reach.staticPascals();
    ControlPoint lower = forward ? reach.to() : reach.from();
    ControlPoint upper = forward ? reach.from() : reach.to();
    double before = last(pressures);
    siphon.add(last(siphon) + rise + reach.friction().pascals());
    gatheredStatic += rise;
    gatheredFriction += reach.friction().pascals();
    slope += reach.friction().slope();
    double raw = base() + gatheredStatic + gatheredFriction;
    if (raw < -ROUNDING) {
      if (Double.isNaN(emptyFrom)) {
        double share = before <= 0 ? 0 : before / (before - raw);
        emptyFrom = lower.distanceM() + share * (upper.distanceM() - lower.distanceM());
      }
      control = upper;
      gatheredStatic = 0;
      gatheredFriction = 0;
      slope = 0;
      pressures.add(0.0);
    } else {
      closeEmpty(lower);
      pressures.add(Math.max(0, raw));
    }
  }

  MarchResult result(List<LinePoint> points, List<FlowState> flows) {
    if (control != null) {
      closeEmpty(control);
    }
    return new MarchResult(
        last(pressures),
        slope,
        control == null ? 1 : 0,
        Optional.ofNullable(control),
        gatheredStatic,
        gatheredFriction,
        last(siphon),
        points,
        partFull,
        flows);
  }

  private double base() {
    return control == null ? downstream : 0;
  }

  private void closeEmpty(ControlPoint end) {
    if (!Double.isNaN(emptyFrom)) {
      double other = end.distanceM();
      partFull.add(new PartFull(Math.min(emptyFrom, other), Math.max(emptyFrom, other)));
      emptyFrom = Double.NaN;
    }
  }

  private static double last(List<Double> values) {
    return values.get(values.size() - 1);
  }
}
