package tankyard.engine.study;

import java.util.Optional;
import tankyard.engine.network.Link;
import tankyard.engine.pipes.LinePoint;
import tankyard.engine.pipes.MarchResult;
import tankyard.engine.pipes.gasliquid.GasLiquidFlow;
import tankyard.engine.pipes.gasliquid.GasLiquidWorking;

/**
 * A laid line that gas comes down with the liquid. Where the oil holds all of it at the lowest
 * pressure of the line, the line is worked as full of liquid, to the last digit; else it is marched
 * as gas and liquid.
 *
 * <p>Only for lines whose flow does not depend on pressures: the slope against the flow it states
 * is the liquid's. Keeps its last answer, because a solve, its audit and its result ask for the
 * same.
 */
final class GasLink implements Link {
  private final LaidLine laid;
  private final LineFill fill;
  private final LineLink full;
  private final String words;
  private final double waterCut;
  private final double gasPerLiquid;
  private final LeaseGas gas;
  private volatile Answer last;

  /**
   * A line with gas.
   *
   * @param full the same line full of liquid
   * @param words for its rate
   * @param gasPerLiquid standard m3 for each m3
   */
  GasLink(
      LaidLine laid,
      LineFill fill,
      LineLink full,
      String words,
      double waterCut,
      double gasPerLiquid,
      LeaseGas gas) {
    this.laid = laid;
    this.fill = fill;
    this.full = full;
    this.words = words;
    this.waterCut = waterCut;
    this.gasPerLiquid = gasPerLiquid;
    this.gas = gas;
  }

  @Override
  public Upstream upstream(double flow, double downstreamPa) {
    MarchResult march = run(flow, downstreamPa).march();
    return new Upstream(
        march.upstreamPascals(),
        march.upstreamPerFlow() * full.times(),
        march.upstreamPerDownstream());
  }

  /** The line at a flow the network balances. */
  LineRun run(double flow, double downstreamPa) {
    Answer before = last;
    if (before != null && before.flow == flow && before.downstreamPa == downstreamPa) {
      return before.run;
    }
    LineRun run = march(flow * full.times(), words, downstreamPa);
    last = new Answer(flow, downstreamPa, run);
    return run;
  }

  /** The line at a flow of its own, not the network's. */
  LineRun march(double flow, String why, double downstreamPa) {
    MarchResult liquid = full.known().at(flow).march(downstreamPa);
    Optional<GasRun> free = free(flow, downstreamPa, liquid);
    MarchResult result =
        free.<MarchResult>map(g -> new GasMarchResult(g.marched(), g.forward(), gas.air(), liquid))
            .orElse(liquid);
    return new LineRun(laid, flow, why, fill, downstreamPa, result, free, Optional.of(this));
  }

  /** Empty where the oil holds it all, or nothing moves. */
  private Optional<GasRun> free(double flow, double downstreamPa, MarchResult liquid) {
    if (flow == 0) {
      return Optional.empty();
    }
    double size = Math.abs(flow);
    GasLiquidFlow both = gas.flow(size, waterCut, size * gasPerLiquid, fill.liquid().temperature());
    if (both.freeGas(gas.absolute(lowestPa(liquid))) == 0) {
      return Optional.empty();
    }
    GasLiquidWorking marched = gas.march(fill, flow > 0, both, downstreamPa);
    return Optional.of(new GasRun(marched, flow > 0));
  }

  private static double lowestPa(MarchResult liquid) {
    return liquid.points().stream().mapToDouble(LinePoint::gaugePascals).min().orElseThrow();
  }

  private record Answer(double flow, double downstreamPa, LineRun run) {}
}
