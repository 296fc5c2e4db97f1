package tankyard.engine.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.lease.Service;
import tankyard.engine.pipes.ControlPoint;
import tankyard.engine.pipes.FlowState;
import tankyard.engine.pipes.HeldMarch;
import tankyard.engine.pipes.LineAtFlow;
import tankyard.engine.pipes.LineCooling;
import tankyard.engine.pipes.LinePoint;
import tankyard.engine.pipes.LineWorking;
import tankyard.engine.pipes.MarchResult;
import tankyard.engine.pipes.PartFull;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.units.Volume;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;

/**
 * A line that was marched.
 *
 * @param flow m3/s its loss was taken at, positive from its start to its end
 * @param flowWords why that rate
 * @param fill what stands in it
 * @param downstreamPa gauge pressure it was marched from
 * @param gas where gas comes free with the liquid
 * @param link where gas comes, free or held: to march the line again from another pressure
 */
public record LineRun(
    LaidLine laid,
    double flow,
    String flowWords,
    LineFill fill,
    double downstreamPa,
    MarchResult march,
    Optional<GasRun> gas,
    Optional<GasLink> link) {

  /** Of a line at the temperature of the ground. */
  static LineRun of(
      LaidLine laid, double flow, String flowWords, LiquidState liquid, double downstreamPa) {
    return of(laid, flow, flowWords, LineFill.even(laid, liquid), downstreamPa);
  }

  static LineRun of(
      LaidLine laid, double flow, String flowWords, LineFill fill, double downstreamPa) {
    return of(laid, fill.at(flow), flowWords, fill, downstreamPa);
  }

  /** Of a line at a flow that is worked out already. */
  static LineRun of(
      LaidLine laid, LineAtFlow atFlow, String flowWords, LineFill fill, double downstreamPa) {
    return new LineRun(
        laid,
        atFlow.flow(),
        flowWords,
        fill,
        downstreamPa,
        atFlow.march(downstreamPa),
        Optional.empty(),
        Optional.empty());
  }

  /** Of a line whose crest holds it at rest between its ends' pressures. */
  static LineRun held(LaidLine laid, LineFill fill, double startPa, double endPa) {
    LineAtFlow still = fill.at(0);
    double pascalsPerM = fill.liquid().liquid().staticPascals(1);
    return new LineRun(
        laid,
        0,
        "held by its crest: nothing gets over it",
        fill,
        endPa,
        new HeldMarch(still.march(endPa), pascalsPerM, startPa, endPa),
        Optional.empty(),
        Optional.empty());
  }

  /** The same line at the same rate, marched from another pressure. */
  LineRun from(double otherPa) {
    return link.map(l -> l.march(flow, flowWords, otherPa))
        .orElseGet(() -> of(laid, flow, flowWords, fill, otherPa));
  }

  /** The same line at another rate; gas comes in the same measure. */
  LineRun at(double rate, String words) {
    return link.map(l -> l.march(rate, words, downstreamPa))
        .orElseGet(() -> of(laid, rate, words, fill, downstreamPa));
  }

  /** What it carries, at the temperature of the ground. */
  public LiquidState liquid() {
    return fill.liquid();
  }

  public Computed<Pressure> lift() {
    return gas.map(g -> g.marched().lift()).orElseGet(() -> working().lift());
  }

  public Computed<Pressure> friction() {
    return gas.map(g -> g.marched().loss()).orElseGet(() -> working().friction());
  }

  private LineWorking working() {
    return new LineWorking(fill.law(), flow, fill.pieces(), march);
  }

  /** The high point that governs, by its distance along the route on the map. */
  public Optional<LineResult.Crest> crest() {
    return march
        .control()
        .map(
            control ->
                new LineResult.Crest(
                    LaidLine.feet(laid.pegAt(control.distanceM()).mapM()),
                    LaidLine.elevation(control.elevationM())));
  }

  /** Pressure at the highest-pressed point over the pressure it was marched from. */
  public double highestPa() {
    return march.highest().gaugePascals();
  }

  /**
   * Line loss from that point to the end it was marched from, or to the high point that cuts it
   * off.
   */
  public double lossFromHighestPa() {
    LinePoint highest = march.highest();
    List<LinePoint> points = march.points();
    LinePoint start = points.get(flow >= 0 ? 0 : points.size() - 1);
    LinePoint end = points.get(flow >= 0 ? points.size() - 1 : 0);
    if (highest.distanceM() == start.distanceM()) {
      return march.frictionPascals();
    }
    if (gas.isEmpty() && !march.isCut()) {
      double rise = end.elevationM() - highest.elevationM();
      double lift = liquid().liquid().staticPascals(rise);
      return Math.max(0, highest.siphonPascals() - downstreamPa - lift);
    }
    // The loss of a part is not kept with gas or a crest: it is taken as even along the stretch.
    double to = march.control().map(ControlPoint::distanceM).orElse(end.distanceM());
    double part = (to - highest.distanceM()) / (to - start.distanceM());
    return march.frictionPascals() * Math.min(1, Math.max(0, part));
  }

  /** What the pipe stands here; anything but clean water counts as oil inside. */
  public Optional<Computed<Pressure>> rating() {
    Service service = laid.line().service();
    boolean water =
        service != Service.FLOW_LINE && service != Service.OIL_LEG && service != Service.OVERFLOW;
    return laid.pipe().ratingAt(fill.warmest(), !water);
  }

  /** The same line, its pipe rated no colder than that. */
  LineRun ratedAt(double kelvins) {
    return new LineRun(
        laid, flow, flowWords, fill.ratedAt(kelvins), downstreamPa, march, gas, link);
  }

  /** Of what it carries, of its friction and of its pipe's rating. */
  List<Caution> cautions() {
    Set<Caution> said = new LinkedHashSet<>(fill.cautions());
    said.addAll(friction().cautions());
    rating().ifPresent(r -> said.addAll(r.cautions()));
    return List.copyOf(said);
  }

  LineResult result() {
    FlowState state = slowest();
    boolean forward = flow >= 0;
    Pressure up = Pressure.psiFromPascals(march.upstreamPascals());
    Pressure down = Pressure.psiFromPascals(downstreamPa);
    return new LineResult(
        laid.id(),
        laid.line().service(),
        LiquidRate.of(Unit.BARREL_PER_DAY.fromSi(Math.abs(flow)), Unit.BARREL_PER_DAY),
        flowWords,
        LaidLine.feet(laid.trenchM()),
        lift(),
        friction(),
        forward ? up : down,
        forward ? down : up,
        gas.map(GasRun::fastestFtPerS).orElse(Unit.FOOT_PER_SECOND.fromSi(state.velocityMPerS())),
        gas.map(GasRun::reynolds).orElse(state.reynolds()),
        gas.map(GasRun::patterns).orElse(state.regime().words()),
        crest(),
        rating().map(Computed::value),
        Volume.of(Unit.BARREL.fromSi(laid.law().volumeM3()), Unit.BARREL),
        liquid().viscosity(),
        laid.line().service() == Service.OIL_LEG,
        temperatures(),
        Optional.empty(),
        LineProfile.of(
            Pressure.psiFromPascals(highestPa()),
            PartFullRuns.marched(march.partFull()),
            this::points),
        gas.map(GasRun::result));
  }

  /** Where the liquid is thickest. */
  private FlowState slowest() {
    List<FlowState> flows = march.flows();
    FlowState slowest = flows.get(0);
    for (FlowState flow : flows) {
      slowest = flow.reynolds() < slowest.reynolds() ? flow : slowest;
    }
    return slowest;
  }

  private LineTemperatures temperatures() {
    return new LineTemperatures(
        liquid().temperature(),
        fill.start(),
        fill.end(),
        fill.warmest(),
        fill.cooling().filter(LineCooling::losesHeat).map(LineCooling::length));
  }

  private List<PipePoint> points() {
    List<PipePoint> points = new ArrayList<>();
    List<PipePoint.Gas> shares = gas.map(GasRun::points).orElse(List.of());
    for (LinePoint point : march.points()) {
      LaidLine.Peg peg = laid.pegAt(point.distanceM());
      points.add(
          new PipePoint(
              LaidLine.feet(point.distanceM()),
              LaidLine.elevation(laid.groundM(peg, point.distanceM())),
              LaidLine.elevation(point.elevationM()),
              Pressure.psiFromPascals(point.gaugePascals()),
              isPartFull(point.distanceM()),
              shares.isEmpty() ? Optional.empty() : Optional.of(shares.get(points.size()))));
    }
    return points;
  }

  private boolean isPartFull(double distanceM) {
    for (PartFull stretch : march.partFull()) {
      if (distanceM >= stretch.fromM() - 1e-9 && distanceM <= stretch.toM() + 1e-9) {
        return true;
      }
    }
    return false;
  }
}
