package tankyard.engine.catalog;

import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * Polyethylene pressure pipe: P = 2 S f_T f_E / (DR - 1), S the hydrostatic design stress at 73
 * degF.
 *
 * <p>The law is printed in makers' pressure rating notes. f_T comes from the hydrostatic design
 * bases 1600 psi at 73 degF and 800 psi at 140 degF, interpolated on one over absolute temperature
 * (the PPI TR-3 rule, from memory); f_E is 0.5 with oil inside (PPI and makers, from memory). Below
 * 73 degF no credit is taken for the cold (common practice).
 *
 * @param designStress at 73 degF
 * @param dimensionRatio outside diameter over least wall
 */
public record PolyRating(Pressure designStress, double dimensionRatio) implements RatingLaw {
  private static final TemperatureFactors FACTORS =
      new TemperatureFactors(
          new double[] {73, 80, 90, 100, 110, 120, 130, 140},
          new double[] {1.0, 0.94, 0.86, 0.78, 0.71, 0.64, 0.57, 0.50});

  private static final double WITH_OIL = 0.5;

  private static final Source SOURCE =
      Source.memory(
          "Makers' pressure rating notes for the law; PPI TR-3 and makers for its factors");

  public PolyRating {
    if (!(dimensionRatio > 1)) {
      throw new IllegalArgumentException(
          "A dimension ratio must be more than 1, not " + dimensionRatio);
    }
  }

  @Override
  public Optional<Computed<Pressure>> at(Temperature pipe, boolean oilInside) {
    double heat = FACTORS.at(pipe);
    double inside = oilInside ? WITH_OIL : 1;
    double psi = 2 * designStress.toPsi() * heat * inside / (dimensionRatio - 1);
    List<Caution> cautions =
        FACTORS.isTooHot(pipe)
            ? RatingCautions.tooHot("Polyethylene", pipe, FACTORS.hottest())
            : List.of();
    return Optional.of(
        Computed.of(Pressure.ofPsi(psi), () -> working(heat, inside)).with(cautions));
  }

  private Working working(double heat, double inside) {
    return Working.of(
        "Rating of the pipe",
        "P",
        "2*S*f_t*f_e/(DR-1)",
        Unit.PSI,
        SOURCE,
        Term.of("S", "hydrostatic design stress at 73 °F", designStress, Unit.PSI),
        Term.number("f_t", "temperature factor, no credit below 73 °F", heat),
        Term.number("f_e", "service factor: 1 water, 0.5 with oil inside", inside),
        Term.number("DR", "dimension ratio, outside diameter over wall", dimensionRatio));
  }
}
