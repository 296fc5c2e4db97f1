/**
 * Keeps the results on the screen in step with the drawing.
 *
 * <p>Start at {@link tankyard.app.solve.SolveService}. It watches the {@link
 * tankyard.app.edit.LeaseStore}, hands each new lease to a {@link tankyard.app.solve.LeaseSolver}
 * on another thread, drops answers that a later edit overtook, and publishes the rest as {@link
 * tankyard.app.solve.Solved} with the revision they belong to:
 *
 * <pre>
 *   solve.latestProperty()      // Solved(revision, answer, millis); null before the first
 *   solve.latest()              // the same as an Optional
 *   solve.freshnessProperty()   // CURRENT, SOLVING, STALE, FAILED
 *   solve.failureProperty()     // why, in words; empty where there is nothing wrong
 *   solve.liveProperty()        // off: edits only mark results stale, and solve() works them out
 * </pre>
 *
 * <p>Listeners are called on the window's thread. While {@code SOLVING} the latest answer is of an
 * earlier lease: show it, but mark it. An id in an answer may be gone from the lease by then, and
 * the other way round.
 *
 * <p>Both executors are passed in; tests pass one that runs at once, and no test has to wait. Sees
 * no scene. Uses {@code edit} and the engine's results; used by every feature that shows a number.
 */
package tankyard.app.solve;
