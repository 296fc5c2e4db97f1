package tankyard.engine.terrain;

/**
 * A point along a line's route.
 *
 * @param distanceM along the route on the map, from its start
 * @param eastM place on the map
 * @param northM place on the map
 * @param groundM elevation of the ground there
 */
public record Station(double distanceM, double eastM, double northM, double groundM) {}
