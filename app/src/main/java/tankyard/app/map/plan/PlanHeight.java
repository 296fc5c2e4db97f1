package tankyard.app.map.plan;

/** A spot height as the map draws it. */
public record PlanHeight(MapSpot at, String words) {}
