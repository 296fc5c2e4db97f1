/**
 * Opening and saving, and never losing anything on the way.
 *
 * <p>Start at {@link tankyard.app.files.LeaseDesk}: open, save, save as, and the question before
 * unsaved changes go. {@link tankyard.app.files.Recovery} keeps a copy of unsaved work and offers
 * it at the next start; {@link tankyard.app.files.Recent} remembers the files used last.
 *
 * <p>Questions go through {@link tankyard.app.files.Dialogs} and {@link
 * tankyard.app.files.FilePicker}, so that tests answer them without a window. A file that can't be
 * read is shown with its first problem; the lease on the screen stays, and saving over such a file
 * keeps it beside ({@code engine.leasefile} does both).
 */
package tankyard.app.files;
