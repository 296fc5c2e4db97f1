/**
 * What was measured, in which unit, as a person typed it.
 *
 * <p>Start at {@link tankyard.engine.units.Length} or {@link tankyard.engine.units.Pressure}: every
 * kind of quantity is a small record around an {@link tankyard.engine.units.Amount}. {@link
 * tankyard.engine.units.AmountText} reads and prints what people type; {@link
 * tankyard.engine.units.UnitSystem} says what results are shown in.
 *
 * <p>Elevations are up positive above the site datum; heights above the ground or a vessel's bottom
 * are lengths. Pressures are gauge or differences. Factors are exact by definition where no comment
 * says otherwise; the oil barrel is 42 US gallons (some unit libraries mean 31.5 or 63 by the same
 * name, which is one reason this package is our own).
 *
 * <p>Immutable, thread-safe, uses no other package. Checked in {@code UnitCheckedTest} against
 * published factors.
 */
package tankyard.engine.units;
