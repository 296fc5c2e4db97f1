/**
 * How a number came about, so that it can be checked by hand.
 *
 * <p>Start at {@link tankyard.engine.working.Computed}: a quantity with its {@link
 * tankyard.engine.working.Working} (formula, inputs with units, {@link
 * tankyard.engine.working.Source}) and its {@link tankyard.engine.working.Caution}s. Low packages
 * return cautions; {@code checks} turns them into findings that name the thing.
 *
 * <p>The printed result is evaluated from the printed inputs by an expression library, and a test
 * evaluates every working again with another one.
 */
package tankyard.engine.working;
