package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Cv;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Length;

/**
 * The float-worked valve on the water outlet.
 *
 * @param model catalogue item it is bought as
 * @param cv wide open
 * @param workingTravel share of full travel at which it works; half if not said
 * @param port bore of its seat; without it the float's pull is not checked
 * @param floatBall without it the float's pull is not checked
 * @param around what is piped ahead of it and round it; nothing if not said
 */
@RecordBuilder
public record DumpValve(
    Optional<String> model,
    Cv cv,
    Optional<Fraction> workingTravel,
    Optional<Length> port,
    Optional<FloatBall> floatBall,
    Optional<Around> around)
    implements DumpValveBuilder.With {

  /** What keeps dirt out of it, and what lets water by while it is taken apart. */
  public enum Around {
    STRAINER("strainer ahead", true, false),
    BYPASS("bypass round it", false, true),
    STRAINER_AND_BYPASS("strainer and bypass", true, true);

    private final String words;
    private final boolean strainer;
    private final boolean bypass;

    Around(String words, boolean strainer, boolean bypass) {
      this.words = words;
      this.strainer = strainer;
      this.bypass = bypass;
    }

    public String words() {
      return words;
    }

    public boolean hasStrainer() {
      return strainer;
    }

    public boolean hasBypass() {
      return bypass;
    }
  }

  public boolean hasStrainer() {
    return around.filter(Around::hasStrainer).isPresent();
  }

  public boolean hasBypass() {
    return around.filter(Around::hasBypass).isPresent();
  }

  /**
   * The float and its lever.
   *
   * @param weight of the whole ball against fresh water; it must lie between oil and brine
   * @param lever pull at the seat over pull at the ball
   */
  public record FloatBall(Length diameter, Gravity weight, Fraction lever) {}
}
