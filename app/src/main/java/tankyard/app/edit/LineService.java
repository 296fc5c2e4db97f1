package tankyard.app.edit;

import tankyard.engine.lease.Service;
import tankyard.engine.lease.Thing;

/** What a line most likely carries, by what stands at its ends. The sheet can say otherwise. */
final class LineService {
  private LineService() {}

  static Service between(Thing from, Thing to) {
    ThingKind start = ThingKind.of(from);
    ThingKind end = ThingKind.of(to);
    return switch (start) {
      case SEPARATOR, GUN_BARREL -> end == ThingKind.OIL_TANK ? Service.OIL_LEG : Service.WATER_LEG;
      case OIL_TANK -> Service.OVERFLOW;
      case WATER_TANK ->
          switch (end) {
            case INJECTION_PUMP -> Service.SUCTION;
            case WELL -> Service.WATER_RETURN;
            default -> Service.OVERFLOW;
          };
      case INJECTION_PUMP -> Service.INJECTION;
      case WELL, TEE, INJECTION_WELL, POWER_POLE, BERM, LANDMARK ->
          end == ThingKind.INJECTION_WELL ? Service.INJECTION : Service.FLOW_LINE;
    };
  }
}
