/**
 * What is drawn on the lease map and where on the screen it comes out; no drawing itself.
 *
 * <p>Start at {@link tankyard.app.map.plan.Plan}, which {@link tankyard.app.map.plan.PlanMaker}
 * makes of a lease and its results, and {@link tankyard.app.map.plan.Camera}, which turns metres on
 * the ground into pixels and back. {@link tankyard.app.map.plan.HitTester} finds what lies under
 * the pointer, {@link tankyard.app.map.plan.Snapper} draws the pointer to things, lines and round
 * numbers, {@link tankyard.app.map.plan.ReliefMaker} cuts contours, {@link
 * tankyard.app.map.plan.LabelPlacer} finds room for names.
 *
 * <p>Metres east and north of the datum; pixels right and down; north is up. All values immutable
 * and free of scene types, so everything here has plain tests. Used by {@code layers} (which paint
 * it), {@code tools} (which change it through edits) and {@code map}.
 */
package tankyard.app.map.plan;
