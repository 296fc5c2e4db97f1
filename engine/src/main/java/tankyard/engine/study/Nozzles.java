package tankyard.engine.study;

import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Well;
import tankyard.engine.units.Length;

/** How high a line's end is on the thing it meets. */
final class Nozzles {
  private final LeaseGround ground;

  Nozzles(LeaseGround ground) {
    this.ground = ground;
  }

  /**
   * Elevation of the nozzle in metres.
   *
   * @param leaves whether the line starts here
   * @param depthM of the line, for a tee, which lies in the trench
   */
  double metres(Thing thing, Service service, boolean leaves, double depthM) {
    return ground.metresUnder(thing) + height(thing, service, leaves, depthM);
  }

  private static double height(Thing thing, Service service, boolean leaves, double depthM) {
    if (thing instanceof Well well) {
      return well.boxHeight().map(Length::metres).orElse(0.0);
    }
    if (thing instanceof Separator separator) {
      return on(separator, service).metres();
    }
    if (thing instanceof GunBarrel barrel) {
      return on(barrel, service);
    }
    if (thing instanceof Tank tank) {
      return on(tank, service, leaves).metres();
    }
    if (thing instanceof InjectionPump pump) {
      return (leaves ? pump.dischargeHeight() : pump.suctionHeight()).metres();
    }
    return thing instanceof InjectionWell well ? well.wellheadHeight().metres() : -depthM;
  }

  private static Length on(Separator separator, Service service) {
    return switch (service) {
      case OIL_LEG -> separator.oilOutletHeight();
      case WATER_LEG -> separator.waterOutletHeight();
      default -> separator.inletHeight();
    };
  }

  /** A water leg starts at the foot of the downcomer, on the vessel's bottom. */
  private static double on(GunBarrel barrel, Service service) {
    return switch (service) {
      case OIL_LEG -> barrel.oilOutletHeight().metres();
      case WATER_LEG -> 0;
      default -> barrel.inletHeight().metres();
    };
  }

  private static Length on(Tank tank, Service service, boolean leaves) {
    return switch (service) {
      case OVERFLOW -> tank.overflowHeight();
      case SUCTION -> Defaults.outletOf(tank);
      default -> leaves ? Defaults.outletOf(tank) : tank.inletHeight();
    };
  }
}
