/**
 * What must be bought and done, counted off the drawing.
 *
 * <p>Start at {@link tankyard.engine.takeoff.Takeoff#of}: a lease, a catalogue and the length of
 * pipe in each line give a list of {@link tankyard.engine.takeoff.TakeoffLine}. Every line names
 * the drawn things that caused it, what it is called in the catalogue, how many, and whether it is
 * new, there already, or taken out. What is there already is listed and costs nothing; what is
 * taken out is listed as the work of taking it out.
 *
 * <p>Each subject has its own {@link tankyard.engine.takeoff.TakeoffRule}; {@link
 * tankyard.engine.takeoff.TakeoffRules} has them all. A rule says in words what it counts and how
 * that is known; nearly all of it is common practice with no source, and says so. Where the
 * catalogue has no such item the line is there all the same, with words and no item.
 *
 * <p>Pipe is counted as drawn and as bought: with waste, in whole rolls or joints. Quantities are
 * in the unit they are sold by ({@link tankyard.engine.lease.Quote.Basis}).
 *
 * <p>No money here ({@code pricing}), no lengths along the ground (the study gives them through
 * {@link tankyard.engine.takeoff.GroundLengths}). Uses {@code lease}, {@code catalog}, {@code
 * units} and {@code working}.
 */
package tankyard.engine.takeoff;
