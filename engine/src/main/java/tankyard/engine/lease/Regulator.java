package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Pressure;

/**
 * The back-pressure regulator on the oil outlet.
 *
 * @param model catalogue item it is bought as
 * @param setting what it is screwed to, at the regulator; empty lets the window recommend one
 * @param buildUp how far the pressure rises above the set point at full flow
 * @param rangeLow lowest setting of its spring
 * @param rangeHigh highest setting of its spring
 */
@RecordBuilder
public record Regulator(
    Optional<String> model,
    Optional<Pressure> setting,
    Optional<Pressure> buildUp,
    Optional<Pressure> rangeLow,
    Optional<Pressure> rangeHigh,
    Optional<Cv> cv)
    implements RegulatorBuilder.With {

  public static Regulator unset() {
    return RegulatorBuilder.builder().build();
  }
}
