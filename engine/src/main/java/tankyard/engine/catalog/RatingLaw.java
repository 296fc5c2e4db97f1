package tankyard.engine.catalog;

import java.util.Optional;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Computed;

/** How much pressure a pipe stands. */
public sealed interface RatingLaw
    permits PolyRating, SteelRating, PvcRating, FibreglassRating, TypedRating {

  /**
   * The rating, with the cautions that go with it; empty where nothing is known, which is neither a
   * pass nor a limit. Zero, with a caution, where the pipe must not be used at all.
   *
   * @param pipe temperature of the pipe's wall
   * @param oilInside whether oil touches the wall; a mixture does
   */
  Optional<Computed<Pressure>> at(Temperature pipe, boolean oilInside);
}
