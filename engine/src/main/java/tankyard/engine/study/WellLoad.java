package tankyard.engine.study;

import java.util.List;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.working.Working;

/**
 * What the way from a well to the separator's gauge adds to the pressure at its stuffing box.
 *
 * @param liftPa differences in height, the liquid inside the vessel included
 * @param frictionPa line loss
 * @param liquid in the line the well flows into
 * @param fromGauge whether the gauge reading reaches the box; not where a crest cuts the way
 */
public record WellLoad(
    String wellId,
    double liftPa,
    double frictionPa,
    Liquid liquid,
    boolean fromGauge,
    List<LineRun> way) {

  /** All of it. */
  public double addedPa() {
    return liftPa + frictionPa;
  }

  /** Whether what the way adds depends on the gauge's reading: gas grows as the pressure falls. */
  public boolean followsGauge() {
    return way.stream().anyMatch(r -> r.link().isPresent());
  }

  /** Workings of lift and friction of each line on the way. */
  public List<Working> workings() {
    return way.stream()
        .flatMap(r -> List.of(r.lift().working(), r.friction().working()).stream())
        .toList();
  }
}
