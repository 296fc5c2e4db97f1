/**
 * Single sums without a lease: a window where one is picked, its values typed in any unit, and the
 * answer stands beside them with its working.
 *
 * <p>Start at {@link tankyard.app.sums.SumsWindow}. Which sums there are, what each takes and what
 * it leaves out come from the engine's list ({@code quick.sums.AllSums}); a new sum there needs
 * nothing here. What was typed for one sum is still there after looking at another.
 *
 * <p>A value that was not typed is the sum's usual one and says so in its field. Nothing is worked
 * out in this package. Uses {@code field}, {@code figures} and the engine's {@code quick}. Checked
 * in {@code SumsViewModelTest} and {@code SumsViewTest}.
 */
package tankyard.app.sums;
