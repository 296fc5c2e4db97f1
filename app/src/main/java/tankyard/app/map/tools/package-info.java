/**
 * What the hand does on the lease map: one small state machine for each gesture.
 *
 * <p>Start at {@link tankyard.app.map.tools.Tool} and {@link tankyard.app.map.tools.SelectTool}. A
 * tool hears presses, drags and releases in pixels, shows a ghost on the {@link
 * tankyard.app.map.tools.MapDesk} while it works, and changes the lease through one edit (or
 * through edits of one gesture). {@link tankyard.app.map.tools.PlaceTool} sets things down, {@link
 * tankyard.app.map.tools.LineTool} draws lines, {@link tankyard.app.map.tools.MeasureTool} is a
 * tape, {@link tankyard.app.map.tools.PanTool} drags the map, {@link tankyard.app.map.tools.Nudge}
 * moves by arrow keys.
 *
 * <p>The keyboard reaches every tool too: the map moves a cross with the arrow keys and turns Enter
 * into a press and a release there. So tools know no mouse and no scene, and have plain tests.
 */
package tankyard.app.map.tools;
