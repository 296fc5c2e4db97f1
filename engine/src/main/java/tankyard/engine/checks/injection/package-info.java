/**
 * Does the water go away, within the permit and the day?
 *
 * <p>Start at {@link tankyard.engine.checks.injection.PermitPressureCheck}. Pressures at the
 * wellhead while the pump runs: a big pump on short hours breaks a permit that the day's average
 * would keep. The permit itself governs, not what is typed here of it.
 */
package tankyard.engine.checks.injection;
