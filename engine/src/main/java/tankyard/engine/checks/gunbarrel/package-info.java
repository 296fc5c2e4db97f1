/**
 * Does the gun barrel part oil and water by itself, and does what leaves it run by itself?
 *
 * <p>Start at {@link tankyard.engine.checks.gunbarrel.TankHighCheck}: nothing pushes the water, so
 * the weir must stand above the tank's inlet and the line loss to it. The others look at the leg at
 * the surge, the downcomer, the vent, the weir as cut, and at how touchy the interface is.
 *
 * <p>Heights are above the gun barrel's bottom. A leg's loss is head in feet of its water. Limits
 * are common practice or follow from the columns in balance; each check names its own.
 */
package tankyard.engine.checks.gunbarrel;
