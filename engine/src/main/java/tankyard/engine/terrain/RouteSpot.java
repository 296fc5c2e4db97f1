package tankyard.engine.terrain;

/** A corner of a route, in metres east and north of the datum. */
public record RouteSpot(double eastM, double northM) {}
