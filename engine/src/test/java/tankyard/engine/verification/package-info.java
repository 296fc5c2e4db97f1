/**
 * Numbers of ours beside numbers from outside, and the page that shows them.
 *
 * <p>To add some: write {@code checks/TOPIC-examples.csv} and {@code checks/TOPIC-values.csv}, let
 * a {@code ...CheckedTest} of your package implement {@link
 * tankyard.engine.verification.CheckedRows}, and write the page anew (see its head).
 */
package tankyard.engine.verification;
