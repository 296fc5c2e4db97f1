/**
 * What the tanks hold, for how long, where it goes over and what catches it.
 *
 * <p>Start at {@link tankyard.engine.tanks.RoundTank} (barrels per foot, volume between heights,
 * hours). {@link tankyard.engine.tanks.Overflow} gives what a line passes by gravity: self-venting
 * at Froude 0.31 and Manning on a slope, the lesser counts. {@link tankyard.engine.tanks.Berm}
 * gives the height of the wall, {@link tankyard.engine.tanks.Breathing} the vents' duty, {@link
 * tankyard.engine.tanks.RoofVent} what a roof feels of it, {@link tankyard.engine.tanks.Orifice}
 * how fast a hole spills.
 *
 * <p>Heights are above the tank's bottom. Sources: geometry; Froude 0.31 from memory; Manning; 40
 * CFR 112.9(c)(2) for the berm, with any state factor as an input; API Std 2000's simple rule; an
 * opening's discharge coefficient of 0.6 from memory.
 *
 * <p>Left out: fire, sloped berm walls, roof and cone-bottom volumes. Local codes decide.
 * Immutable, thread-safe. Checked in {@code TanksCheckedTest}.
 */
package tankyard.engine.tanks;
