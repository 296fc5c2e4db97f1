package tankyard.app.map.plan;

/**
 * A mark on a line that sets an end of the window: the crest past which it runs part full, say.
 *
 * @param badge which end, and at how much
 */
public record PlanMark(String lineId, MapSpot at, Badge badge) {}
