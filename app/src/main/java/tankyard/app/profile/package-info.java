/**
 * The ground, the pipe and the pressure along one line.
 *
 * <p>Start at {@link tankyard.app.profile.ProfileView}. It shows the line that is picked, or else
 * the first water leg. Pressure is drawn as head: as high above the pipe as the liquid would stand
 * in an open riser there, so that where the head touches the pipe the pressure is nothing. Past a
 * crest that governs the line runs part full, and that stretch is hatched. A read-out follows the
 * pointer or the arrow keys.
 *
 * <p>{@link tankyard.app.profile.ProfileMaker} turns the engine's {@code LineResult} into a {@link
 * tankyard.app.profile.ProfilePicture} in the unit shown. Head is of oil along an oil leg and of
 * brine along every other line; the key says which. Distances are along the pipe from the line's
 * start.
 *
 * <p>Uses {@code edit}, {@code solve}, {@code chart}, {@code figures}. Checked in {@code
 * ProfileMakerTest}, {@code ProfileViewModelTest} and {@code ProfileViewTest}.
 */
package tankyard.app.profile;
