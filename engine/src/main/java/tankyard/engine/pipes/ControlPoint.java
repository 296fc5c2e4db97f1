package tankyard.engine.pipes;

/**
 * The high point that governs a line: beyond it the line runs part full and pulls nothing, so only
 * what lies before it counts.
 *
 * @param run which run it is on, from zero
 * @param station of that run, from zero
 * @param distanceM from the line's start
 */
public record ControlPoint(int run, int station, double distanceM, double elevationM) {}
