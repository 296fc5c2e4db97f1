/**
 * What a plunger pump delivers, what it takes to drive it, and whether liquid reaches it.
 *
 * <p>Start at {@link tankyard.engine.pumps.PumpPower} (shaft power, hours a day) and {@link
 * tankyard.engine.pumps.PlungerPump} (displacement and rate at a speed). {@link
 * tankyard.engine.pumps.Suction} gives the suction head available, less {@link
 * tankyard.engine.pumps.Acceleration}.
 *
 * <p>Pressures here are differences, but air and vapour pressures are absolute. Sources: swept
 * volume; power is rate times pressure; acceleration head by the usual formula with its constants
 * (some from memory); 1976 standard atmosphere.
 *
 * <p>Left out: centrifugal curves, motors and wires, pulsation dampers. Immutable, thread-safe.
 * Checked in {@code PumpsCheckedTest}.
 */
package tankyard.engine.pumps;
