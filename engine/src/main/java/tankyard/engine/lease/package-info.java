/**
 * The lease as drawn: site, ground, fluids, wells, lines, vessels, tanks, cases and prices.
 *
 * <p>Start at {@link tankyard.engine.lease.Lease}, an immutable tree of records. {@link
 * tankyard.engine.lease.Thing} is whatever stands on the map ({@link tankyard.engine.lease.Well},
 * {@link tankyard.engine.lease.Separator}, {@link tankyard.engine.lease.GunBarrel}, {@link
 * tankyard.engine.lease.Tank} ...), or is drawn corner by corner ({@link
 * tankyard.engine.lease.Outlined}: a berm, a landmark); {@link tankyard.engine.lease.Line} joins
 * two of those that stand. Quantities are kept as typed. What is {@code Optional} and empty is not
 * known: the study takes a default and says so, or leaves the check undone and says so. The
 * compiler makes a builder for each of the larger records ({@code TankBuilder}), so that a copy
 * names only what differs.
 *
 * <p>Elevations are up positive above one datum; a thing's heights are above its own ground. Rates
 * of wells are day's averages. Pressures are gauge.
 *
 * <p>No files ({@code leasefile}), no numbers worked out ({@code study}), no catalogue: a pipe is
 * named by id.
 */
package tankyard.engine.lease;
