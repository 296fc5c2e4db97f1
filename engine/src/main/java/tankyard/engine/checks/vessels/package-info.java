/**
 * Can the separator's gauge read what it must, and does the vessel hold its liquids long enough?
 *
 * <p>Start at {@link tankyard.engine.checks.vessels.WindowClosedCheck}: no setting works. The
 * others look at a typed setting, at each stuffing box, at the regulator, the float and the heights
 * the window hangs on. Where a cure is cheap to work out, {@link
 * tankyard.engine.checks.vessels.Cures} says what it buys.
 *
 * <p>Pressures gauge, at the separator's gauge unless the words say regulator or stuffing box. The
 * least must be met with no oil flowing, the most with the regulator built up. Limits nobody typed
 * are said to be not checked; they neither pass nor govern.
 */
package tankyard.engine.checks.vessels;
