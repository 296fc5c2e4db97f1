/**
 * How does a program read what was worked out?
 *
 * <p>Start at {@link tankyard.engine.report.json.ResultsJson}: it writes {@link
 * tankyard.engine.report.doc.Results} as one JSON document, described field by field in {@code
 * docs/results-json.md}. The records of the results are written as they are: a field is named like
 * its record's component. So renaming a component changes a published name; a test holds the names
 * against the page.
 *
 * <p>A quantity is an object of value and unit, in field units whatever was typed; only times stay
 * in the unit they were worked out in. Numbers have ten significant figures, and what has no value
 * is left out. A worked-out quantity names its working by number; all workings stand once, at the
 * end. Words for choices are small with dashes, as in a lease file.
 *
 * <p>Deterministic: the same results give the same bytes. Written with the Jackson library.
 */
package tankyard.engine.report.json;
