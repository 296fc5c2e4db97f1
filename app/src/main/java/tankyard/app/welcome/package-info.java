/**
 * The page a newcomer sees: three ways to start, and the files worked on last.
 *
 * <p>Start at {@link tankyard.app.welcome.StartPage}. It knows no file and no lease; {@code App}
 * hands it what its buttons do.
 */
package tankyard.app.welcome;
