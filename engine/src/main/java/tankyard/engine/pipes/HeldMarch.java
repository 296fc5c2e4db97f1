package tankyard.engine.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line at rest whose crest neither end's pressure gets over: liquid stands up from each end as
 * high as its pressure holds it, and between the two there is none.
 */
public final class HeldMarch implements MarchResult {
  private final MarchResult law;
  private final ControlPoint crest;
  private final double startPa;
  private final List<LinePoint> points = new ArrayList<>();
  private LinePoint highest;

  /**
   * Of a line by what its law says of it.
   *
   * @param law with the crest that holds
   * @param pascalsPerM of what stands in it
   * @param startPa gauge at its start
   * @param endPa gauge at its end
   */
  public HeldMarch(MarchResult law, double pascalsPerM, double startPa, double endPa) {
    this.law = law;
    this.startPa = startPa;
    crest = law.control().orElseThrow();
    List<LinePoint> stations = law.points();
    double startM = stations.get(0).elevationM();
    double endM = stations.get(stations.size() - 1).elevationM();
    for (LinePoint station : stations) {
      boolean before = station.distanceM() <= crest.distanceM();
      double full =
          before
              ? startPa - pascalsPerM * (station.elevationM() - startM)
              : endPa - pascalsPerM * (station.elevationM() - endM);
      LinePoint point =
          new LinePoint(station.distanceM(), station.elevationM(), Math.max(0, full), full);
      points.add(point);
      highest = highest == null || point.gaugePascals() > highest.gaugePascals() ? point : highest;
    }
  }

  @Override
  public double upstreamPascals() {
    return startPa;
  }

  @Override
  public double upstreamPerFlow() {
    return law.upstreamPerFlow();
  }

  @Override
  public double upstreamPerDownstream() {
    return 0;
  }

  @Override
  public boolean isCut() {
    return true;
  }

  @Override
  public Optional<ControlPoint> control() {
    return Optional.of(crest);
  }

  @Override
  public double staticPascals() {
    return law.staticPascals();
  }

  @Override
  public double frictionPascals() {
    return 0;
  }

  @Override
  public double siphonUpstreamPascals() {
    return law.siphonUpstreamPascals();
  }

  @Override
  public List<LinePoint> points() {
    return List.copyOf(points);
  }

  /** What holds it is no free surface that runs. */
  @Override
  public List<PartFull> partFull() {
    return List.of();
  }

  @Override
  public List<FlowState> flows() {
    return law.flows();
  }

  @Override
  public LinePoint highest() {
    return highest;
  }
}
