/**
 * Does the power get to the motors?
 *
 * <p>Start at {@link tankyard.engine.checks.power.VoltageDropCheck}. Amps and volts hold in every
 * case alike. Wire, breaker, starter and grounding are for the local electrical code and a licensed
 * electrician to decide.
 */
package tankyard.engine.checks.power;
