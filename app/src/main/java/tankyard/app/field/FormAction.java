package tankyard.app.field;

/**
 * A button.
 *
 * @param why what it does, for the tooltip
 */
public record FormAction(String id, String words, String why, Runnable run) {}
