/**
 * What does the lease as a whole still lack, what was taken for granted, and what needs care?
 *
 * <p>Start at {@link tankyard.engine.checks.site.DiagnosesCheck}, which passes on why something
 * can't be worked out. The rules about care speak up only where the lease gives cause, name the
 * published warning they rest on, and defer to local rules and to people licensed for the work.
 */
package tankyard.engine.checks.site;
