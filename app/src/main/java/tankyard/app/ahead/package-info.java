/**
 * What runs out next as the water grows, and in which month.
 *
 * <p>Start at {@link tankyard.app.ahead.AheadPanel}; {@link tankyard.app.ahead.AheadFigures} turns
 * the answer's outlook into rows, the first first, each with its working. Nothing is worked out
 * here. Uses {@code edit}, {@code solve}, {@code figures}. Checked in {@code AheadFiguresTest}.
 */
package tankyard.app.ahead;
