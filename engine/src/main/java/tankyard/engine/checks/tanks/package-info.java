/**
 * Is there room in the tanks, and where does it go when there is not?
 *
 * <p>Start at {@link tankyard.engine.checks.tanks.OilStorageCheck} and {@link
 * tankyard.engine.checks.tanks.WaterHoursCheck}: days the road may be out, hours the injection pump
 * may be down. Then the overflow against all the fluid that comes when the dump valve sticks, the
 * high switch, the vents, and the berm round all of it.
 *
 * <p>Heights above the tank's own bottom. Left out: vents against fire.
 */
package tankyard.engine.checks.tanks;
