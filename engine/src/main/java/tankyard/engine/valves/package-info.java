/**
 * What a valve costs in pressure, what a float can pull, and what a regulator holds.
 *
 * <p>Start at {@link tankyard.engine.valves.ValveLoss} ({@code law(cv, liquid)} for the network,
 * {@code at(cv, rate, gravity)} with its working). {@link tankyard.engine.valves.FloatPull} answers
 * the upper limit that a float and its port set. {@link tankyard.engine.valves.RegulatorLaw} gives
 * the pressure ahead of a spring regulator and whether it rules at all.
 *
 * <p>Gauge pressures and differences. Cv in gpm of water at 1 psi. Sources: the definition of Cv;
 * buoyancy; the 30 % friction and half working travel are habits and are shown as assumed.
 *
 * <p>Left out: flashing and noise, gas through a valve, relief valves. Immutable, thread-safe. Uses
 * {@code fluids}. Checked in {@code ValvesCheckedTest}.
 */
package tankyard.engine.valves;
