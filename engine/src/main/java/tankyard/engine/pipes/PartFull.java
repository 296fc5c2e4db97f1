package tankyard.engine.pipes;

/**
 * A stretch that runs part full at atmospheric pressure, between distances from the line's start.
 */
public record PartFull(double fromM, double toM) {}
