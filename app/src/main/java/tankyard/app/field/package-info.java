/**
 * How a person types one value, and how a sheet of such values is laid out.
 *
 * <p>Start at {@link tankyard.app.field.Form}: sections of entries and of rows, put together by
 * {@link tankyard.app.field.FormBuilder} from the names of record components, so that a wrong name
 * fails as soon as the form is made. {@link tankyard.app.field.FormView} draws it. An {@link
 * tankyard.app.field.Entry} is the model of one field and knows no scene: what is shown, what is
 * typed, what is wrong with it. {@link tankyard.app.field.AmountEntry} takes any unit of its
 * dimension; a bare number is taken in the unit the field shows.
 *
 * <p>Promises: what was typed stays until it is taken or put back with Escape, even when the
 * document changes meanwhile or another thing is looked at ({@link tankyard.app.field.Drafts}); an
 * error stands beside its field and names what was typed and what is accepted; an empty optional
 * field means "assumed" and says what is assumed.
 *
 * <p>A {@link tankyard.app.field.Part} is the place of one value in a tree of records, with the way
 * to put a new one there. A value leaves this package only as a change through {@link
 * tankyard.app.field.FormHost}; what that does to the document is the caller's business.
 *
 * <p>Uses the engine's units only. Used by the sheet; may be used by every feature. Checked in
 * {@code AmountEntryTest}, {@code PartTest} and, with keys and mouse, in {@code FormViewTest}.
 */
package tankyard.app.field;
