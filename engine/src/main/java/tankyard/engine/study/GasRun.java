package tankyard.engine.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tankyard.engine.pipes.gasliquid.GasLiquidPoint;
import tankyard.engine.pipes.gasliquid.GasLiquidWorking;
import tankyard.engine.pipes.gasliquid.Gradient;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.GasRate;
import tankyard.engine.units.Speed;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

/**
 * A line that was marched as gas and liquid.
 *
 * @param forward whether it flows from the line's start to its end
 */
record GasRun(GasLiquidWorking marched, boolean forward) {

  List<Caution> cautions() {
    return marched.cautions();
  }

  /** At the end the flow leaves by, where the gas is largest. */
  private Gradient end() {
    List<GasLiquidPoint> points = marched.march().points();
    return points.get(points.size() - 1).gradient();
  }

  double fastestFtPerS() {
    return marched.march().points().stream()
        .mapToDouble(p -> Unit.FOOT_PER_SECOND.fromSi(p.gradient().mixtureMPerS()))
        .max()
        .orElse(0);
  }

  double reynolds() {
    return marched.reynolds();
  }

  /** Patterns along the line, in the direction of flow, each once. */
  String patterns() {
    Set<String> words = new LinkedHashSet<>();
    marched.march().points().forEach(p -> words.add(p.gradient().pattern().words()));
    return String.join("; ", words);
  }

  GasInLine result() {
    Gradient end = end();
    double liquid = end.liquidPart() * end.mixtureMPerS();
    double free =
        marched
            .flow()
            .freeGas(marched.march().points().get(marched.march().points().size() - 1).pressure());
    return new GasInLine(
        gas(free),
        gas(marched.flow().standardGasM3PerS()),
        Fraction.ofRatio(1 - end.liquidPart()),
        Fraction.ofRatio(marched.march().meanHoldUp(marched.line().line().volumeM3())),
        speed(liquid),
        speed(end.mixtureMPerS() - liquid),
        patterns(),
        marched.erosional(),
        marched.march().steps(),
        cautions());
  }

  /** One for each station, in the line's own direction. */
  List<PipePoint.Gas> points() {
    List<PipePoint.Gas> points = new ArrayList<>();
    for (GasLiquidPoint point : marched.march().points()) {
      PipePoint.Gas here =
          new PipePoint.Gas(
              Fraction.ofRatio(point.gradient().holdUp()),
              Fraction.ofRatio(1 - point.gradient().liquidPart()),
              point.gradient().pattern().words());
      points.add(forward ? points.size() : 0, here);
    }
    return points;
  }

  private static GasRate gas(double standardM3PerS) {
    return GasRate.ofMcfPerDay(Unit.MCF_PER_DAY.fromSi(standardM3PerS));
  }

  private static Speed speed(double metresPerSecond) {
    return Speed.ofFeetPerSecond(Unit.FOOT_PER_SECOND.fromSi(metresPerSecond));
  }
}
