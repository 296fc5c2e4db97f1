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

/** What somebody typed for a pipe of his own: two ratings at 73 degF, or one, or none. */
public record TypedRating(Optional<Pressure> water, Optional<Pressure> oil) implements RatingLaw {
  private static final double TYPED_AT_F = 73;

  @Override
  public Optional<Computed<Pressure>> at(Temperature pipe, boolean oilInside) {
    List<Caution> cautions =
        pipe.toFahrenheit() > TYPED_AT_F
            ? List.of(RatingCautions.typedAtAnotherTemperature(pipe))
            : List.of();
    return (oilInside ? oil : water)
        .map(typed -> Computed.of(typed, () -> working(typed, oilInside)).with(cautions));
  }

  private static Working working(Pressure typed, boolean oilInside) {
    return Working.of(
        "Rating of the pipe",
        "P",
        "R",
        Unit.PSI,
        Source.lease("the lease's own pipe"),
        Term.of("R", oilInside ? "typed, oil inside" : "typed, water inside", typed, Unit.PSI));
  }
}
