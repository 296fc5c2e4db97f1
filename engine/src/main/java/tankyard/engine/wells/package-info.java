/**
 * What wells give and take: the rate of a pumping well while it runs, and the pressure an injection
 * well asks for.
 *
 * <p>Start at {@link tankyard.engine.wells.InjectionLaw} (wellhead pressure at a running rate, and
 * the rate at a limit), {@link tankyard.engine.wells.ScreeningLimit} (the federal screening form)
 * and {@link tankyard.engine.wells.RunningRate}.
 *
 * <p>Gauge pressures at the wellhead. Injectivity is a straight line typed by the owner; the
 * screening form is 40 CFR 147.503; a permit governs. Left out: reservoir growth of pressure over
 * time, tubing friction on its own, decline. Immutable, thread-safe. Checked in {@code
 * WellsCheckedTest}.
 */
package tankyard.engine.wells;
