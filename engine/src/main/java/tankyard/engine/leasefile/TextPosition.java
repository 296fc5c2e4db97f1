package tankyard.engine.leasefile;

/**
 * A place in a file's text.
 *
 * @param line counted from 1
 * @param column counted from 1
 */
public record TextPosition(int line, int column) {}
