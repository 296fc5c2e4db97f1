/**
 * The sheet of whatever is picked: inputs first, then results, then what was assumed.
 *
 * <p>Start at {@link tankyard.app.sheet.SheetView} and {@link tankyard.app.sheet.SheetViewModel}.
 * There is one class for each kind of thing ({@code WellSheet}, {@code SeparatorSheet}, {@code
 * TankSheet}, {@code LineSheet} ...) that says which fields it has, in which order, and why each
 * matters. With nothing picked the sheet is the lease's own; with several things picked it changes
 * what they have in common.
 *
 * <p>Every edit goes through the {@code LeaseStore}, as a step named after the field; successive
 * edits of one field join into one step. An edit after which the lease's file could not be read
 * again is refused beside the field ({@link tankyard.app.sheet.LeaseHost}). Choosing a catalogue
 * item fills in its dimensions, which stay open to change.
 *
 * <p>Empty optional fields show what the study assumes ({@code engine.study.Defaults}) or that a
 * check is left undone. Results are those of the latest answer, one column for each case, each with
 * its working; nothing is worked out here.
 *
 * <p>Uses {@code field}, {@code figures}, {@code edit}, {@code solve} and the engine's lease,
 * catalogue and lease-file packages. Checked in {@code SheetViewModelTest} and {@code
 * SheetViewTest}.
 */
package tankyard.app.sheet;
