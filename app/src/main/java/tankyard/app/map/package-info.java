/**
 * The lease map: the drawing in the middle of the window, and everything a hand does on it.
 *
 * <p>Start at {@link tankyard.app.map.MapPane} (the node) and {@link tankyard.app.map.MapViewModel}
 * (what it shows). The view hands events to the tool in hand and asks layers to paint; it works
 * nothing out. {@link tankyard.app.map.MapActions} is what menus and keys can do to what is picked,
 * {@link tankyard.app.map.MapPicture} writes the drawing as a picture.
 *
 * <p>Below it: {@code map.plan} (what is drawn where), {@code map.tools} (gestures), {@code
 * map.layers} (painting); they know nothing of this package. The map meets the rest of the window
 * only in the lease store, the selection, the view settings, the hand and the results.
 *
 * <p>Keys: arrows move what is picked (Shift ten times as far) or the map; Tab steps through
 * things; with something in hand arrows move the pointer, Tab jumps to things and Enter presses. F2
 * renames, Delete deletes, + - 0 zoom, Escape gives up, the menu key opens the menu of what is
 * picked.
 */
package tankyard.app.map;
