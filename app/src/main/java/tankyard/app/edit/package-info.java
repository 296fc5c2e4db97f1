/**
 * The open lease, every change to it, and what is picked: what all parts of the window share.
 *
 * <p>Start at {@link tankyard.app.edit.LeaseStore}: it holds the current {@link
 * tankyard.engine.lease.Lease} as an observable value, and {@code store.edit(...)} is the only way
 * to change it. An {@link tankyard.app.edit.Edit} is a small immutable object with a name and a
 * function from lease to lease; undo puts the earlier lease back, so no edit has to know its
 * inverse.
 *
 * <pre>
 *   store.edit(Move.of(List.of("W9"), eastM, northM).in(gesture));   // a drag: joins into one step
 *   store.edit(Replace.of(well.withOil(rate), "oil rate"));          // a field of the sheet
 *   store.edit(Change.of("Change ground in winter", l -&gt; l.withSite(...)));
 *   store.lease(), leaseProperty(), revisionProperty(), dirtyProperty(), undo(), redo()
 *   selection.idsProperty(), single(), select(id), reveal(id)         // reveal: show it on the map
 *   view.unitsProperty(), view.caseIdProperty()
 * </pre>
 *
 * <p>{@code edit} throws {@link tankyard.app.edit.EditRefusedException} with a sentence for the
 * person at the screen, and nothing has changed then. The other edits: {@link
 * tankyard.app.edit.Place}, {@link tankyard.app.edit.Connect}, {@link tankyard.app.edit.SplitLine},
 * {@link tankyard.app.edit.AddCorner}, {@link tankyard.app.edit.DragCorner}, {@link
 * tankyard.app.edit.RemoveCorner}, {@link tankyard.app.edit.Delete}, {@link
 * tankyard.app.edit.Rename}, {@link tankyard.app.edit.SetStatus}, {@link
 * tankyard.app.edit.Duplicate}, {@link tankyard.app.edit.Align}.
 *
 * <p>{@link tankyard.app.edit.Blanks} makes new things and lines, {@link tankyard.app.edit.Naming}
 * their ids and names. {@link tankyard.app.edit.Hand} is what the person is about to set down or
 * draw.
 *
 * <p>A typed ground height belongs to the place where it was shot: {@code Places} says what a move
 * does with it.
 *
 * <p>Map distances in metres, east and north positive. Used on the window's thread only. Sees no
 * scene, no file and no solver. Used by every feature; uses {@code engine.lease} and {@code
 * engine.units}.
 */
package tankyard.app.edit;
