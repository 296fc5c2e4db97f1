package tankyard.engine.study;

import java.util.List;
import java.util.Optional;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.pipes.LineAtFlow;
import tankyard.engine.pipes.LineCooling;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;

/**
 * What stands in a line: one liquid at the temperature of the ground, or one that cools on its way,
 * cut into pieces each of its own viscosity.
 *
 * @param liquid at the temperature of the ground; its weight is taken all along
 * @param law of the line, cut where the pieces meet
 * @param pieces one for each run of the law
 * @param startK temperature at the line's own start
 * @param endK temperature at the line's own end
 * @param cooling where it does not have the temperature of the ground all along
 */
record LineFill(
    LiquidState liquid,
    LineLaw law,
    List<Liquid> pieces,
    double startK,
    double endK,
    Optional<LineCooling> cooling) {
  LineFill {
    pieces = List.copyOf(pieces);
  }

  /** At the temperature of the ground all along. */
  static LineFill even(LaidLine laid, LiquidState liquid) {
    double kelvins = liquid.temperature().kelvins();
    return new LineFill(
        liquid, laid.law(), List.of(liquid.liquid()), kelvins, kelvins, Optional.empty());
  }

  LineAtFlow at(double flow) {
    return law.at(flow, pieces);
  }

  Temperature start() {
    return fahrenheit(startK);
  }

  Temperature end() {
    return fahrenheit(endK);
  }

  /** What plastic pipe is rated at. */
  Temperature warmest() {
    return cooling.isEmpty() ? liquid.temperature() : fahrenheit(Math.max(startK, endK));
  }

  private static Temperature fahrenheit(double kelvins) {
    return Temperature.ofFahrenheit(Unit.FAHRENHEIT.fromSi(kelvins));
  }
}
