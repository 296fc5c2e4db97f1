/**
 * The back-pressure window as a picture: one bar for each separator, from nothing up to the most
 * its gauge may read.
 *
 * <p>Start at {@link tankyard.app.pressure.PressureView}. Left of the window the bar shows what the
 * least is made of (static, friction, dump valve, margin); then comes the room to set the regulator
 * in; then what some well, vessel or pipe would not stand. Both ends are named. Ticks below show
 * the limits that come next, what the oil leg needs, and the answer one gets by looking at the tank
 * alone. A closed window shows how far apart its ends are.
 *
 * <p>{@link tankyard.app.pressure.PictureMaker} turns the engine's {@code Window} into a {@link
 * tankyard.app.pressure.WindowPicture} in the unit shown; {@link tankyard.app.pressure.WindowBar}
 * draws that.
 *
 * <p>Pressures are readings at the separator's gauge. Nothing is worked out here but the rounding.
 * Uses {@code edit}, {@code solve}, {@code chart}, {@code figures}. Checked in {@code
 * PictureMakerTest}, {@code PressureViewModelTest} and {@code PressureViewTest}.
 */
package tankyard.app.pressure;
