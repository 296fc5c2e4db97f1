package tankyard.engine.terrain;

/** A place, in metres east and north of the datum, whose ground elevation is known in metres. */
public record Spot(double eastM, double northM, double groundM) {}
