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

/** Fibreglass line pipe: its standard rating, tested at 150 degF, oil or water inside. */
public record FibreglassRating(Pressure standard) implements RatingLaw {
  private static final double HOTTEST_F = 150;
  private static final Source SOURCE =
      Source.published("API Spec 15LR, 7th ed., scope: standard ratings on a 150 °F basis");

  @Override
  public Optional<Computed<Pressure>> at(Temperature pipe, boolean oilInside) {
    boolean tooHot = pipe.toFahrenheit() > HOTTEST_F;
    List<Caution> cautions =
        tooHot ? RatingCautions.tooHot("This fibreglass pipe", pipe, HOTTEST_F) : List.of();
    Pressure rating = tooHot ? Pressure.ofPsi(0) : standard;
    return Optional.of(Computed.of(rating, () -> working(tooHot ? 0 : 1)).with(cautions));
  }

  private Working working(double heat) {
    return Working.of(
        "Rating of the pipe",
        "P",
        "R*f_t",
        Unit.PSI,
        SOURCE,
        Term.of("R", "standard pressure rating", standard, Unit.PSI),
        Term.number("f_t", "1 up to 150 °F", heat));
  }
}
