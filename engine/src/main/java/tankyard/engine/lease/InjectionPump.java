package tankyard.engine.lease;

import java.util.Optional;
import tankyard.engine.units.Elevation;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Length;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Power;
import tankyard.engine.units.Pressure;

/**
 * The pump that puts the water away.
 *
 * @param rate while it runs
 * @param suctionHeight above its ground
 * @param dischargeHeight above its ground
 * @param efficiency pump and drive together
 * @param motor nameplate power
 * @param relief setting of the relief valve on its discharge
 */
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
    Optional<Pressure> relief)
    implements Thing {

  @Override
  public String kind() {
    return "injection pump";
  }

  @Override
  public InjectionPump movedTo(MapPoint place) {
    return new InjectionPump(
        id,
        name,
        place,
        ground,
        status,
        model,
        rate,
        suctionHeight,
        dischargeHeight,
        efficiency,
        motor,
        relief);
  }

  @Override
  public InjectionPump renamed(String newName) {
    return new InjectionPump(
        id,
        newName,
        at,
        ground,
        status,
        model,
        rate,
        suctionHeight,
        dischargeHeight,
        efficiency,
        motor,
        relief);
  }

  @Override
  public InjectionPump withId(String newId) {
    return new InjectionPump(
        newId,
        name,
        at,
        ground,
        status,
        model,
        rate,
        suctionHeight,
        dischargeHeight,
        efficiency,
        motor,
        relief);
  }

  @Override
  public InjectionPump withStatus(Status newStatus) {
    return new InjectionPump(
        id,
        name,
        at,
        ground,
        newStatus,
        model,
        rate,
        suctionHeight,
        dischargeHeight,
        efficiency,
        motor,
        relief);
  }

  @Override
  public InjectionPump withGround(Optional<Elevation> newGround) {
    return new InjectionPump(
        id,
        name,
        at,
        newGround,
        status,
        model,
        rate,
        suctionHeight,
        dischargeHeight,
        efficiency,
        motor,
        relief);
  }
}
