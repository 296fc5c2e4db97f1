/**
 * A catalogue to try the program with: trade-standard sizes with their sources, and invented
 * prices.
 *
 * <p>Everything is data beside this package ({@code poly-pipe.csv}, {@code tanks.csv} ...), read by
 * {@code tankyard.engine.catalog.csv}. A new tank size or valve is a new row. {@link
 * tankyard.catalogdemo.DemoCatalog} hands it to whoever asks {@code Catalogs.find()}, and with it a
 * lease of our own invention.
 *
 * <p>Sizes name their source and how it is known; many are from memory and say so. Every price is
 * an invented round number and marked so.
 */
package tankyard.catalogdemo;
