/**
 * Every rule there is, in one list.
 *
 * <p>Start at {@link tankyard.engine.checks.all.AllChecks}: {@code look} runs all rules on the
 * evidence of one lease and gives their findings, the worst first. It stands above the subjects,
 * since a list in {@code checks} itself would make a ring of packages.
 *
 * <p>A new rule is one line in that list; a test fails where a rule has no page in {@code
 * docs/checks} or a page has no rule.
 */
package tankyard.engine.checks.all;
