package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.AbsolutePressure;

/**
 * A gas-liquid line at one station.
 *
 * @param gradient in the pipe that leads here, at this pressure
 */
public record GasLiquidPoint(
    double distanceM, double elevationM, AbsolutePressure pressure, Gradient gradient) {}
