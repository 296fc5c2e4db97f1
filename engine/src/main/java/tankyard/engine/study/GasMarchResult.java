package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.AbsolutePressure;
import tankyard.engine.pipes.ControlPoint;
import tankyard.engine.pipes.FlowState;
import tankyard.engine.pipes.LinePoint;
import tankyard.engine.pipes.MarchResult;
import tankyard.engine.pipes.PartFull;
import tankyard.engine.pipes.PipeRun;
import tankyard.engine.pipes.gasliquid.GasLiquidPoint;
import tankyard.engine.pipes.gasliquid.GasLiquidWorking;

/**
 * A gas-liquid march told as a liquid's is: gauge pressures, stations in the line's own direction.
 * Its loss is friction and what speeds the gas up. No gas siphons, so the naive answer is the same.
 *
 * @param full the line full of liquid, for the slope against the flow
 */
record GasMarchResult(
    GasLiquidWorking marched, boolean forward, AbsolutePressure air, MarchResult full)
    implements MarchResult {

  @Override
  public double upstreamPascals() {
    return marched.march().upstream().gaugePascals(air);
  }

  @Override
  public double upstreamPerFlow() {
    return full.upstreamPerFlow();
  }

  @Override
  public double upstreamPerDownstream() {
    return isCut() ? 0 : 1;
  }

  @Override
  public boolean isCut() {
    return marched.march().control().isPresent();
  }

  @Override
  public Optional<ControlPoint> control() {
    return marched.march().control().map(this::turned);
  }

  @Override
  public double staticPascals() {
    return marched.march().stretch().liftPascals();
  }

  @Override
  public double frictionPascals() {
    return marched.march().stretch().lossPascals();
  }

  @Override
  public double siphonUpstreamPascals() {
    return upstreamPascals();
  }

  @Override
  public List<LinePoint> points() {
    List<LinePoint> points = new ArrayList<>();
    for (GasLiquidPoint point : marched.march().points()) {
      double gauge = point.pressure().gaugePascals(air);
      LinePoint here = new LinePoint(turned(point.distanceM()), point.elevationM(), gauge, gauge);
      points.add(forward ? points.size() : 0, here);
    }
    return points;
  }

  @Override
  public List<PartFull> partFull() {
    return marched.march().partFull().stream().map(this::turned).toList();
  }

  @Override
  public List<FlowState> flows() {
    return full.flows();
  }

  @Override
  public LinePoint highest() {
    return points().stream()
        .reduce((a, b) -> b.gaugePascals() > a.gaugePascals() ? b : a)
        .orElseThrow();
  }

  private ControlPoint turned(ControlPoint control) {
    if (forward) {
      return control;
    }
    List<PipeRun> runs = marched.line().line().runs();
    int stations = runs.get(control.run()).path().stations();
    return new ControlPoint(
        runs.size() - 1 - control.run(),
        stations - 1 - control.station(),
        turned(control.distanceM()),
        control.elevationM());
  }

  private PartFull turned(PartFull stretch) {
    return forward ? stretch : new PartFull(turned(stretch.toM()), turned(stretch.fromM()));
  }

  private double turned(double distanceM) {
    return forward ? distanceM : marched.line().line().lengthM() - distanceM;
  }
}
