/**
 * What would open the window, or save the cold lines, in psi and in money?
 *
 * <p>Start at {@link tankyard.engine.cures.CureFinder}: for each separator it tries one change of
 * the lease after the other - a bigger dump valve, a bigger leg, a deeper trench at the crest, a
 * tank filled from below, tank and pump moved to the battery, a bigger flow line, produced water
 * brought back - and gives a {@link tankyard.engine.cures.CureBook}: each {@link
 * tankyard.engine.cures.CureResult} with the window, the stop and fix findings that are left, and
 * the change of the bill, best first; and how far the water tank can go with the setting as it is.
 *
 * <p>Each cure is an edit of the lease, and the edited lease is worked out by the same engine as
 * any other, checks and bill included ({@link tankyard.engine.cures.Trial}); nothing is estimated
 * beside. What the bill does not know is said with the cure. A transfer pump is told by hand sums,
 * since no lease can say it yet; a gun barrel by hand sums and worked out in the place of the
 * separator.
 *
 * <p>It costs a full working-out for each cure, so nothing calls it while a lease is being edited:
 * it is made when somebody asks. Pressures gauge, psi; money of the bill.
 *
 * <p>Uses {@code window}, {@code checks}, {@code pricing}, {@code study}; used by {@code api} and
 * {@code report}. Checked in {@code CureFinderTest}. Immutable, thread-safe, no files, no clock.
 */
package tankyard.engine.cures;
