/**
 * Does any line burst, rush, settle or run part full?
 *
 * <p>One rule to a class, each read off the lines of {@link tankyard.engine.study.CaseResult}.
 * Start at {@link tankyard.engine.checks.lines.PipeRatingCheck}, which matters most.
 *
 * <p>Speeds in ft/s in the full pipe, pressures gauge in psi. Limits on speed are those quoted from
 * API RP 14E; the pipe's rating is the catalogue's or the lease's own, at its temperature and with
 * what is in it. Left out: wax, sand, corrosion, surge from a shut valve.
 */
package tankyard.engine.checks.lines;
