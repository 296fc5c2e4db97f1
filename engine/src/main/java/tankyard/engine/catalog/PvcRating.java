package tankyard.engine.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Caution;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * PVC schedule pipe with cemented joints: P = 2 S t f_T / (D - t), S 2000 psi at 73 degF (ASTM
 * D1785), f_T from a maker's table. For water only.
 */
public record PvcRating(Pressure designStress, Length outside, Length wall) implements RatingLaw {
  private static final TemperatureFactors FACTORS =
      new TemperatureFactors(
          new double[] {73, 80, 90, 100, 110, 120, 130, 140},
          new double[] {1, 0.88, 0.75, 0.62, 0.51, 0.40, 0.31, 0.22});

  private static final Source SOURCE =
      Source.published("ASTM D1785 as restated by makers; a maker's temperature derating table");

  @Override
  public Optional<Computed<Pressure>> at(Temperature pipe, boolean oilInside) {
    double heat = FACTORS.at(pipe);
    double inside = oilInside ? 0 : 1;
    double psi =
        2
            * designStress.toPsi()
            * wall.toInches()
            * heat
            * inside
            / (outside.toInches() - wall.toInches());
    List<Caution> cautions = new ArrayList<>();
    if (FACTORS.isTooHot(pipe)) {
      cautions.addAll(RatingCautions.tooHot("PVC", pipe, FACTORS.hottest()));
    }
    if (oilInside) {
      cautions.add(RatingCautions.waterOnly());
    }
    return Optional.of(
        Computed.of(Pressure.ofPsi(psi), () -> working(heat, inside)).with(cautions));
  }

  private Working working(double heat, double inside) {
    return Working.of(
        "Rating of the pipe",
        "P",
        "2*S*w*f_t*f_e/(D-w)",
        Unit.PSI,
        SOURCE,
        Term.of("S", "hydrostatic design stress at 73 °F", designStress, Unit.PSI),
        Term.of("w", "least wall", wall, Unit.INCH),
        Term.number("f_t", "temperature factor, no credit below 73 °F", heat),
        Term.number("f_e", "1 for water; PVC has no rating with oil inside", inside),
        Term.of("D", "outside diameter", outside, Unit.INCH));
  }
}
