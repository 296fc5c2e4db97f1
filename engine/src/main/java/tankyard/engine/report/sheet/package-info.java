/**
 * How does a report look as plain text?
 *
 * <p>Start at {@link tankyard.engine.report.sheet.PlainSheet}: it prints a {@link
 * tankyard.engine.report.doc.Report} on a page of 100 columns in one width of letter, so that it
 * reads the same in a terminal, in a mail and on paper. Columns line up, long cells wrap inside
 * their column, and the workings stand at the end under the numbers that the tables point to.
 *
 * <p>The tables are laid out here and not by a library: the one at hand writes its text through the
 * machine's own character set, which loses degrees and fractions on some machines.
 *
 * <p>Left out: what is said ({@code doc}). No files, no clock; the same report gives the same text.
 */
package tankyard.engine.report.sheet;
