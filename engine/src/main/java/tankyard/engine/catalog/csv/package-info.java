/**
 * Reads a catalogue and its prices from CSV files.
 *
 * <p>Start at {@link tankyard.engine.catalog.csv.CatalogFiles}: given a way to open a file by name,
 * it reads every file that is there and leaves out the rest. One class reads one kind of row.
 *
 * <p>A file may begin with lines that start with {@code #}: where the figures come from, what was
 * left out. Then one line of column names, then one item a line. A column's name ends in the unit
 * of a bare number ({@code diameter_ft}); a cell may name another ({@code 15 ft 6 in}). Every row
 * names its source by a key of {@code sources.csv} and says how it is known: {@code read}, {@code
 * memory}, {@code practice} or {@code invented}.
 *
 * <p>What can't be read is refused with file, line, column, what was found and what is accepted
 * ({@link tankyard.engine.catalog.csv.CatalogFormatException}). Nothing is guessed. CSV itself is
 * read by Apache Commons CSV.
 */
package tankyard.engine.catalog.csv;
