/**
 * What the injection pumps must do, case by case: pressures while pumping, power, hours a day, and
 * the gauge reading at which the wellhead is at its permit.
 *
 * <p>Start at {@link tankyard.app.pumps.PumpsPanel}; {@link tankyard.app.pumps.PumpFigures} says
 * which results stand in which row and why they matter. Nothing is worked out here. Uses {@code
 * edit}, {@code solve}, {@code figures}. Checked in {@code PumpFiguresTest}.
 */
package tankyard.app.pumps;
