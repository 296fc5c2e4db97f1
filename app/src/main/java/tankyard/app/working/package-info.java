/**
 * Shows how one number came about: formula, what was put in, source, result, and the workings of
 * the inputs one step further down.
 *
 * <p>Start at {@link tankyard.app.working.WorkingWindow}: {@code show(working)} opens it or, where
 * it is open, turns it to the new number. Features call it through a {@code Consumer<Working>} and
 * so need not know it. {@link tankyard.app.working.WorkingViewModel} keeps the way back and writes
 * the working as text for the clipboard.
 *
 * <p>Nothing is worked out here: the printed result comes from the engine's {@code Working}, which
 * evaluates the printed formula with the printed inputs. Checked in {@code WorkingViewModelTest}
 * and {@code WorkingViewTest}.
 */
package tankyard.app.working;
