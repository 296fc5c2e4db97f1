/**
 * What should a person know about this lease that the numbers alone don't shout?
 *
 * <p>Start at {@link tankyard.engine.checks.Finding}: which thing, in which case, the number
 * against its limit, the way out. A {@link tankyard.engine.checks.Check} is one rule in one class;
 * it looks at the {@link tankyard.engine.checks.Evidence}, which is everything that was worked out,
 * and works out nothing big itself. The subjects have a package each ({@code lines}, {@code
 * vessels}, {@code tanks}, {@code injection}, {@code site}); {@code all} above them holds the list
 * of them.
 *
 * <p>A rule that looks case by case offers every case to {@link tankyard.engine.checks.Worst},
 * which keeps the worst. {@link tankyard.engine.checks.Versus} writes a value against its limit so
 * that the two can be told apart.
 *
 * <p>Every rule has a page, {@code docs/checks/<id>.md}, and a test that it hits, that it misses
 * and what it does exactly on its limit. How to add one: {@code docs/howto/add-a-check.md}.
 *
 * <p>Pressures gauge, at the separator's gauge; words in field units. Immutable, thread-safe, no
 * files, no clock. Nothing here says that a design is right: a lease without findings is one these
 * rules have nothing to say about.
 *
 * <p>Uses {@code window} and {@code study}; used by {@code sizing} and {@code api}.
 */
package tankyard.engine.checks;
