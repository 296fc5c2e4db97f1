/**
 * What can be bought and what it can stand: pipe, fittings, valves, tanks, vessels, pumps, and the
 * work that goes with them; and what it costs.
 *
 * <p>Start at {@link tankyard.engine.catalog.Catalogs#find()}, which asks every {@link
 * tankyard.engine.catalog.CatalogSource} on the class path for its {@link
 * tankyard.engine.catalog.Catalog} and {@link tankyard.engine.catalog.PriceList}. Everything in a
 * catalogue is a {@link tankyard.engine.catalog.CatalogItem}: an immutable record with an id, a
 * name and the {@link tankyard.engine.working.Source} of its figures. The items are data, read from
 * CSV by {@code catalog.csv}: a new tank size or valve is a new row, no new code.
 *
 * <p>{@link tankyard.engine.catalog.Pipe#ratingAt} says what a pipe stands at a temperature and
 * with oil or water inside. Polyethylene: 2 S / (DR - 1) with a temperature factor, halved with oil
 * inside. Steel: Barlow less mill tolerance and thread, and never more than its fittings. PVC:
 * water only. Fibreglass: its standard rating up to 150 degF. Each law names its source in the
 * working. A pipe typed in the lease has the rating that was typed, or none: then it is not
 * checked.
 *
 * <p>Sizes are real (bore, outside diameter); the {@link tankyard.engine.catalog.NominalSize} is
 * only the trade's name for them. Pressures are gauge.
 *
 * <p>No hydraulics ({@code pipes}, {@code valves}), no counting ({@code takeoff}), no totals
 * ({@code pricing}). Uses {@code units}, {@code working}, and of {@code lease} only a lease's own
 * pipes and the bases of its quotes.
 */
package tankyard.engine.catalog;
