/**
 * Paints the lease map, one sheet on another.
 *
 * <p>Start at {@link tankyard.app.map.layers.Layer} and {@link tankyard.app.map.layers.Painting}.
 * From the bottom up: {@link tankyard.app.map.layers.GroundLayer}, {@link
 * tankyard.app.map.layers.GridLayer}, {@link tankyard.app.map.layers.OutlineLayer}, {@link
 * tankyard.app.map.layers.LineLayer}, {@link tankyard.app.map.layers.ThingLayer}, {@link
 * tankyard.app.map.layers.LabelLayer}, {@link tankyard.app.map.layers.GhostLayer}, {@link
 * tankyard.app.map.layers.MarginLayer}.
 *
 * <p>A layer gets a plan and a camera and paints; it works nothing out, remembers nothing and hears
 * no events. Everything is painted on one canvas: a lease has tens of things, and what is under the
 * pointer is found on the plan, not among nodes. Decided so because labels must know of each other
 * to keep apart, and because the same layers paint the picture that is exported.
 *
 * <p>Used by {@code map}; uses {@code plan} and {@code style}.
 */
package tankyard.app.map.layers;
