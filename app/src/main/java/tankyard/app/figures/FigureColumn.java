package tankyard.app.figures;

/**
 * A column of results: one design case.
 *
 * @param heading the case's name
 * @param current whether it is the case looked at in the rest of the window
 */
public record FigureColumn(String heading, boolean current) {}
