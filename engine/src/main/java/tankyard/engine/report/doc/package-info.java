/**
 * What does a report of a lease say, whatever it is printed on?
 *
 * <p>Start at {@link tankyard.engine.report.doc.LeaseReport}: from {@link
 * tankyard.engine.report.doc.Results}, everything that was worked out, it makes a {@link
 * tankyard.engine.report.doc.Report}: sections of sentences, lists and tables, and the numbered
 * workings they point to. How it looks is for {@code sheet} and other writers to say.
 *
 * <p>Every number is shown through {@link tankyard.engine.report.doc.Figure}, which knows its unit
 * and decimals in field and metric units. Readings that bound the regulator are rounded to the side
 * that keeps inside the window: the least up, the most down. Workings stay in the units they were
 * worked in.
 *
 * <p>Each {@link tankyard.engine.report.doc.Headline} keeps a printed number together with the
 * working it must agree with; a test holds all of them against each other and works every printed
 * working out again.
 *
 * <p>Immutable, no files, no clock: the date is given.
 */
package tankyard.engine.report.doc;
