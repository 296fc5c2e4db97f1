/**
 * How everything looks: light and dark, the colours of drawings, the symbols of things.
 *
 * <p>Start at {@link tankyard.app.style.Look}, which dresses a scene: a base theme of the AtlantaFX
 * library, then {@code studio.css} (spacing, type, density) and {@code light.css} or {@code
 * dark.css} (our own accent). {@link tankyard.app.style.Inks} are the colours for whatever is drawn
 * by hand: map, profile, window; {@link tankyard.app.style.Symbols} draws the things, on the map
 * and in the rack alike.
 *
 * <p>Colour never says anything alone: services also differ by dash and weight, things by outline
 * and letter. Symbols are plain plan outlines, and for the pump the circle and triangle of ISO
 * 10628.
 *
 * <p>Uses {@code edit} for the kinds of thing and {@code memory} for the choice of shade.
 */
package tankyard.app.style;
