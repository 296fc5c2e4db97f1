package tankyard.engine.pipes;

/**
 * One station of a marched line.
 *
 * @param distanceM from the line's start
 * @param gaugePascals pressure in the pipe; zero where it runs part full
 * @param siphonPascals pressure if the line held full everywhere; far below zero it can't
 */
public record LinePoint(
    double distanceM, double elevationM, double gaugePascals, double siphonPascals) {}
