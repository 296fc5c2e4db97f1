package tankyard.engine.pipes.gasliquid;

import tankyard.engine.fluids.AbsolutePressure;

/**
 * One step of a march, as a hand march has it: the gradient at the step's mean pressure times its
 * length.
 *
 * @param run which run of the line, from zero
 * @param distanceM of its upstream end from the line's start
 * @param slope radians from level in the direction of flow
 * @param mean pressure the gradient is taken at
 * @param pascals what the step costs
 */
public record GasLiquidStep(
    int run,
    double distanceM,
    double lengthM,
    double slope,
    AbsolutePressure mean,
    Gradient gradient,
    double pascals) {}
