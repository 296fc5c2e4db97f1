/**
 * The bill: what must be bought and done, which drawn thing caused it, and what it costs.
 *
 * <p>Start at {@link tankyard.app.takeoff.TakeoffView} and {@link
 * tankyard.app.takeoff.TakeoffViewModel}. Picking a line picks the things that caused it on the
 * map. A missing price says "no price" and is never nothing; a price a year old or more is greyed
 * and says so; a made-up price says so. The sums name how many lines they are without, and the
 * total has its working.
 *
 * <p>The bill comes from the engine ({@code pricing.Bill}) and is copied or written as CSV by the
 * engine's {@code BillCsv}; where it is written to is the caller's business ({@link
 * tankyard.app.takeoff.SaveText}). Uses {@code edit}, {@code solve}, {@code figures}. Checked in
 * {@code TakeoffViewModelTest} and {@code TakeoffViewTest}.
 */
package tankyard.app.takeoff;
