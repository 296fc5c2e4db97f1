package tankyard.app.map.plan;

/**
 * A mark on a line: the crest past which it runs part full.
 *
 * @param badge what the crest governs
 */
public record PlanMark(String lineId, MapSpot at, Badge badge) {}
