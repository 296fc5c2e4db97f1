package tankyard.engine.study;

import tankyard.engine.units.Elevation;
import tankyard.engine.units.Length;
import tankyard.engine.units.Pressure;

/**
 * One point along a line, as the profile shows it.
 *
 * @param distance along the pipe from its start
 * @param ground elevation of the ground above or below it
 * @param pipe elevation of the pipe
 * @param pressure of the liquid there; zero where the line runs part full
 */
public record PipePoint(
    Length distance, Elevation ground, Elevation pipe, Pressure pressure, boolean partFull) {}
