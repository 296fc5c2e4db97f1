/**
 * Worked-out numbers side by side, one column for each design case, each with the way to its
 * working.
 *
 * <p>Start at {@link tankyard.app.figures.FigureRows}, which turns quantities into rows of digits,
 * and {@link tankyard.app.figures.FigureGrid}, which draws them. Units stand in the row's heading
 * and not in the cells; all cells of a row have the same decimals ({@link
 * tankyard.app.figures.Digits}), so that the points line up.
 *
 * <p>A dash means that the number is not known; why is said by findings and assumptions, not here.
 * Nothing is worked out in this package. Used by the sheet, the tanks and the pumps; uses the
 * engine's units, workings and design cases. Checked in {@code DigitsTest} and {@code
 * FigureRowsTest}.
 */
package tankyard.app.figures;
