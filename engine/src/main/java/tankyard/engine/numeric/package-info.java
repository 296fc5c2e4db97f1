/**
 * The arithmetic that several laws share: tables, curves through them, and roots.
 *
 * <p>Start at {@link tankyard.engine.numeric.NumberTable}, which reads the small tables that ship
 * with the engine and keeps their source line; {@link tankyard.engine.numeric.MonotoneCurve} and
 * {@link tankyard.engine.numeric.Grid} read between their rows; {@link
 * tankyard.engine.numeric.Roots} finds a crossing with Apache Commons Math.
 *
 * <p>Plain doubles without units: whoever calls says what they mean. Curves and grids hold their
 * end value beyond the table and say so ({@code covers}); the caller turns that into a caution.
 *
 * <p>Immutable, thread-safe, no clock. Uses no other package of the engine.
 */
package tankyard.engine.numeric;
