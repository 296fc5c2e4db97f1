/**
 * What a person should know about the lease as drawn, worst first.
 *
 * <p>Start at {@link tankyard.app.findings.FindingsView}: a list that can be narrowed by severity,
 * and beside it the finding that is picked with its way out, its number's working and its source.
 * Picking one shows its thing on the map. Severity is a sign and a word as well as a colour.
 *
 * <p>The findings come from the engine's checks and are only put in order here; what could not be
 * worked out at all (the engine's {@code Diagnosis}) stands among them as a stop. An empty list
 * does not mean that all is well, only that what was checked is: the words for it say so.
 *
 * <p>Uses {@code edit}, {@code solve}, {@code figures}. Checked in {@code FindingsViewModelTest}
 * and {@code FindingsViewTest}.
 */
package tankyard.app.findings;
