package tankyard.engine.window;

/**
 * How much is left of a window.
 *
 * @param leastPsi the least gauge reading
 * @param roomPsi between the lowest and the highest setting; below zero where none works
 */
public record Room(double leastPsi, double roomPsi) {}
