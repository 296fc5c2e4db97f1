package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Length;
import tankyard.engine.working.Computed;

/**
 * What drives the water into a pump when its tank is at its lowest.
 *
 * @param level of the water over the pump's suction at pump-off; below zero for a lift
 * @param friction in the suction line, feet of the water
 * @param acceleration head lost in speeding the line's water up at every stroke
 * @param available head left at the pump, above the water's vapour
 * @param needed what the pump's maker asks for, if typed
 * @param lowest level of the water over the suction at which just that and {@link #SPARE} are left
 */
@RecordBuilder
public record SuctionResult(
    String pumpId,
    String tankId,
    Length level,
    Length friction,
    Computed<Length> acceleration,
    Computed<Length> available,
    Optional<Length> needed,
    Optional<Computed<Length>> lowest)
    implements SuctionResultBuilder.With {

  /** Kept above what the maker asks for: gas in the water and a worn valve take it. */
  public static final Length SPARE = Length.ofFeet(3);
}
