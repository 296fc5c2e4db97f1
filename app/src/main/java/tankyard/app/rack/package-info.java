/**
 * The rack of things to set down on the map.
 *
 * <p>Start at {@link tankyard.app.rack.RackView}. Each item takes its kind in {@link
 * tankyard.app.edit.Hand hand}; a drag carries it over the window and lets go where the map
 * listens. The rack knows no map: they meet in the hand.
 *
 * <p>Everything works by mouse (click and click, or drag) and by keys (Enter on an item, then
 * arrows and Enter on the map).
 */
package tankyard.app.rack;
