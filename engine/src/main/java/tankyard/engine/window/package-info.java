/**
 * What must the separator's gauge read, at least and at most, and who says so?
 *
 * <p>Start at {@link tankyard.engine.window.WindowFinder}: from the studied cases of one lease it
 * finds a {@link tankyard.engine.window.Window} for each separator. Every {@link
 * tankyard.engine.window.PressureLimit} names the thing it comes from and the case in which it
 * binds hardest, split into lift, friction, valve and margin.
 *
 * <p>Pressures are gauge, at the separator's gauge, elevations up positive. The least must be met
 * with no oil flowing (lock-up), the most with the regulator built up. Limits nobody typed are
 * listed as not checked; they neither pass nor govern.
 *
 * <p>Source: hydrostatics; Darcy friction from {@code pipes}; valve loss by Cv; habits marked as
 * such. Left out: gas above the liquid, pressure waves.
 *
 * <p>Uses {@code study}; used by {@code checks} and {@code api}. Checked in {@code PublicCasesTest}
 * against leases worked by hand.
 */
package tankyard.engine.window;
