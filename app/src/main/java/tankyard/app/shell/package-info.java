/**
 * The window's frame: menus, keys, bars, and where each part has its place.
 *
 * <p>Start at {@link tankyard.app.shell.Shell}. Parts come in as plain regions: the rack at the
 * left, the map in the middle, the sheet at the right, tabs ({@link tankyard.app.shell.Pane}) in
 * the strip below the map. Whatever can be done from a menu or a key is one {@link
 * tankyard.app.shell.Action} in the one registry {@link tankyard.app.shell.Actions}, which refuses
 * two of one key.
 *
 * <p>F6 moves the keyboard from part to part. Used by {@code App} alone; knows no feature.
 */
package tankyard.app.shell;
