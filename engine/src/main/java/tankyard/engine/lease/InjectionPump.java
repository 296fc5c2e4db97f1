package tankyard.engine.lease;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import tankyard.engine.units.Current;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Rotation;

/**
 * The pump that puts the water away.
 *
 * @param rate while it runs
 * @param suctionHeight above its ground
 * @param dischargeHeight above its ground
 * @param efficiency pump and drive together
 * @param motor nameplate power
 * @param relief setting of the relief valve on its discharge
 * @param plungers how many it has
 * @param speed of its crankshaft
 * @param plunger diameter of each of its plungers
 * @param stroke of its plungers
 * @param slip share that leaks back past valves and packing
 * @param sheave pitch diameter of the sheave on the pump
 * @param motorSpeed of its motor at full load
 * @param suctionNeeded head its maker asks for at the suction, above the water's vapour
 * @param motorAmps on its motor's nameplate
 * @param wire from the nearest power pole to its motor
 */
@RecordBuilder
public record InjectionPump(
    String id,
    String name,
    MapPoint at,
    Optional<Elevation> ground,
    Status status,
    Optional<String> model,
    LiquidRate rate,
    Length suctionHeight,
    Length dischargeHeight,
    Optional<Fraction> efficiency,
    Optional<Power> motor,
    Optional<Pressure> relief,
    Optional<Plungers> plungers,
    Optional<Rotation> speed,
    Optional<Length> plunger,
    Optional<Length> stroke,
    Optional<Fraction> slip,
    Optional<Length> sheave,
    Optional<Rotation> motorSpeed,
    Optional<Length> suctionNeeded,
    Optional<Current> motorAmps,
    Optional<Wire> wire)
    implements MotorDriven {

  /** How many plungers it has: the more, the smoother it draws. All single-acting. */
  public enum Plungers {
    SIMPLEX("simplex", 1),
    DUPLEX("duplex", 2),
    TRIPLEX("triplex", 3),
    QUINTUPLEX("quintuplex", 5);

    private final String words;
    private final int number;

    Plungers(String words, int number) {
      this.words = words;
      this.number = number;
    }

    public int number() {
      return number;
    }

    public String words() {
      return words;
    }
  }

  @Override
  public String kind() {
    return "injection pump";
  }

  @Override
  public InjectionPump movedTo(MapPoint place) {
    return InjectionPumpBuilder.builder(this).at(place).build();
  }

  @Override
  public InjectionPump renamed(String newName) {
    return InjectionPumpBuilder.builder(this).name(newName).build();
  }

  @Override
  public InjectionPump withId(String newId) {
    return InjectionPumpBuilder.builder(this).id(newId).build();
  }

  @Override
  public InjectionPump withStatus(Status newStatus) {
    return InjectionPumpBuilder.builder(this).status(newStatus).build();
  }

  @Override
  public InjectionPump withGround(Optional<Elevation> newGround) {
    return InjectionPumpBuilder.builder(this).ground(newGround).build();
  }
}
