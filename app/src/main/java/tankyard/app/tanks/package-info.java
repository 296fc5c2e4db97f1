/**
 * What the vessels and tanks hold against what comes, case by case: minutes in each separator, days
 * of oil and of closed road, hours of water, what each overflow passes.
 *
 * <p>Start at {@link tankyard.app.tanks.TanksPanel}, which makes the model and the view; {@link
 * tankyard.app.tanks.TankFigures} says which results stand in which row and why they matter.
 *
 * <p>Nothing is worked out here. Uses {@code edit}, {@code solve}, {@code figures}. Checked in
 * {@code TankFiguresTest}.
 */
package tankyard.app.tanks;
