package tankyard.engine.study;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.fluids.LiquidState;
import tankyard.engine.pipes.LineAtFlow;
import tankyard.engine.pipes.LineCooling;
import tankyard.engine.pipes.LineLaw;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;

/**
 * What stands in a line: one liquid at the temperature of the ground, or one that cools on its way,
 * cut into pieces each of its own viscosity.
 *
 * @param liquid at the temperature of the ground; its weight is taken all along
 * @param law of the line, cut where the pieces meet
 * @param pieces one for each run of the law
 * @param startK temperature at the line's own start
 * @param endK temperature at the line's own end
 * @param warmestK what its pipe is rated at
 * @param warm the same liquid at other temperatures, where it does not have the ground's all along
 * @param cooling where it does not have the temperature of the ground all along
 */
record LineFill(
    LiquidState liquid,
    LineLaw law,
    List<Liquid> pieces,
    double startK,
    double endK,
    double warmestK,
    Optional<CoolingLiquid> warm,
    Optional<LineCooling> cooling) {
  LineFill {
    pieces = List.copyOf(pieces);
  }

  /** At the temperature of the ground all along. */
  static LineFill even(LaidLine laid, LiquidState liquid) {
    double kelvins = liquid.temperature().kelvins();
    return new LineFill(
        liquid,
        laid.law(),
        List.of(liquid.liquid()),
        kelvins,
        kelvins,
        kelvins,
        Optional.empty(),
        Optional.empty());
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
    return fahrenheit(warmestK);
  }

  /** The same, its pipe rated no colder than that; only the rating knows. */
  LineFill ratedAt(double kelvins) {
    return new LineFill(
        liquid, law, pieces, startK, endK, Math.max(warmestK, kelvins), warm, cooling);
  }

  /** At the ground's temperature, and at both ends where they are warmer or colder. */
  List<Caution> cautions() {
    Set<Caution> said = new LinkedHashSet<>(liquid.cautions());
    warm.ifPresent(
        w -> {
          said.addAll(w.at(startK).cautions());
          said.addAll(w.at(endK).cautions());
        });
    return List.copyOf(said);
  }

  private static Temperature fahrenheit(double kelvins) {
    return Temperature.ofFahrenheit(Unit.FAHRENHEIT.fromSi(kelvins));
  }
}
