/**
 * The quick sums themselves, one class each: what it asks, which law answers.
 *
 * <p>Start at {@link tankyard.engine.quick.sums.AllSums}. To add one: a class that implements
 * {@link tankyard.engine.quick.QuickSum}, its line in {@code AllSums}; the command, the page
 * docs/quick-sums.md and the tests follow from that.
 *
 * <p>Uses the physics packages and holds no law of its own. Immutable, thread-safe.
 */
package tankyard.engine.quick.sums;
