/**
 * What does every line, well, vessel and tank of the lease do in each design case?
 *
 * <p>Start at {@link tankyard.engine.study.Survey} (what is the same in every case: ground, laid
 * lines, who leads where), then {@link tankyard.engine.study.CaseStudy} (one case: liquids, rates,
 * legs, gathering lines for given gauge readings) and {@link tankyard.engine.study.CaseReport},
 * which gives a {@link tankyard.engine.study.CaseResult} to show. {@code window} stands between the
 * last two: it finds what the gauge must read.
 *
 * <p>Only this package joins lease, catalogue and laws. Elevations up positive above the site
 * datum; pressures gauge; flow positive from a line's start to its end; SI inside, field units in
 * results.
 *
 * <p>Rates: the day's average, or every well at the rate it makes while it runs; a line one well
 * has to itself feels the top of its stroke. What nobody typed is taken from {@link
 * tankyard.engine.study.Defaults} and listed by {@link tankyard.engine.study.Assumptions}; what
 * can't be worked out is a {@link tankyard.engine.study.Diagnosis} that names the thing.
 *
 * <p>Where a well's temperature is typed its lines cool to the ground and thicken on the way
 * ({@code Warmth}, {@code CoolingPieces}); what starts lines again that gelled is in {@code
 * Restarts}. Left out: gas in loops, waves. Immutable, thread-safe, no files, no clock.
 */
package tankyard.engine.study;
