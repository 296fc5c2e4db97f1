package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.units.Length;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.vessels.Settling;
import tankyard.engine.working.Computed;

/**
 * The smallest drops a separator parts, both ways: water that falls through its oil and oil that
 * rises through its water. The liquids are as cold as the ground: nothing heats them.
 *
 * @param water smallest drop of water that reaches the interface before its oil leaves
 * @param oil smallest drop of oil that reaches the interface before its water leaves
 */
record SettledDrops(Optional<Computed<Length>> water, Optional<Computed<Length>> oil) {

  /** Nothing is said of a layer that nothing comes into, or where the oil does not float. */
  static SettledDrops of(
      CaseStudy study,
      double oilDepthM,
      Optional<Computed<Time>> oilStays,
      double waterDepthM,
      Optional<Computed<Time>> waterStays) {
    if (!study.oilFloats()) {
      return new SettledDrops(Optional.empty(), Optional.empty());
    }
    return new SettledDrops(
        through(study, study.oil(), oilDepthM, oilStays),
        through(study, study.brine(), waterDepthM, waterStays));
  }

  private static Optional<Computed<Length>> through(
      CaseStudy study, LiquidState layer, double depthM, Optional<Computed<Time>> stays) {
    return stays
        .filter(t -> depthM > 0 && t.value().seconds() > 0)
        .map(
            t ->
                Settling.smallest(
                    Length.of(Unit.FOOT.fromSi(depthM), Unit.FOOT),
                    t.value(),
                    study.brine().gravity().value(),
                    study.oil().gravity().value(),
                    new Settling.Around(layer.gravity().value(), layer.viscosity().value())));
  }
}
