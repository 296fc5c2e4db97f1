package tankyard.app.map.plan;

/** From a power pole to a motor that hangs on it, straight. */
public record PlanWire(String poleId, MapSpot pole, String motorId, MapSpot motor) {
  public boolean touches(String id) {
    return poleId.equals(id) || motorId.equals(id);
  }
}
