/**
 * Single calculations without a lease: what a pipe loses, how tall a berm must be.
 *
 * <p>Start at {@link tankyard.engine.quick.QuickSum}: an id, a title, its {@link
 * tankyard.engine.quick.QuickInput}s (name, unit of a bare number, usual value and why, example)
 * and {@code compute}. {@link tankyard.engine.quick.QuickValues#read} turns typed text into checked
 * values, {@link tankyard.engine.quick.QuickResult} holds the numbers with their workings and
 * cautions. The sums themselves are in {@code quick.sums}, listed in {@code AllSums}; {@code
 * quick.cli} makes a command of each. A window can ask for the same inputs.
 *
 * <p>Whatever was not typed is a usual value and is shown as assumed. A bad input is one line that
 * names it. Nothing is computed here: the laws are those of the physics packages.
 *
 * <p>Used by {@code cli} and the studio. Checked in {@code AllSumsTest}: every sum's example runs,
 * and every working is worked out again from its printed inputs by another library.
 */
package tankyard.engine.quick;
