/**
 * What does growing water run into, and how soon?
 *
 * <p>One rule, {@link tankyard.engine.checks.growth.RunsOutCheck}, which passes on what {@code
 * outlook} worked out, under one id for each kind of thing that runs out. What has run out already
 * is left to the rules that look at today. Used by {@code checks.all}.
 */
package tankyard.engine.checks.growth;
