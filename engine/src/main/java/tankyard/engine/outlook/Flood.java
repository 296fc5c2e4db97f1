package tankyard.engine.outlook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.lease.DesignCase;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** Water that doubles again and again: how much there is at a month, and when there is so much. */
final class Flood {
  private static final Source DOUBLING =
      Source.lease("water that doubles in the time typed: today's x 2^(t/Td)");

  /** Long before a million times today's water everything has run out, and sums stay finite. */
  private static final double MOST_TIMES = 1e6;

  private final Time doubles;
  private final List<CaseStudy> today;

  Flood(List<CaseStudy> studies, Time doubles) {
    this.doubles = doubles;
    this.today = today(studies);
  }

  /** The cases with today's water, each season and way of running once. */
  private static List<CaseStudy> today(List<CaseStudy> studies) {
    Map<List<Object>, CaseStudy> kept = new LinkedHashMap<>();
    for (CaseStudy study : studies) {
      DesignCase c = study.designCase();
      List<Object> key = List.of(c.season(), c.running(), c.oilFactor(), c.sharedSurgeFactor());
      CaseStudy now = c.waterFactor() == 1 ? study : at(study, 1);
      kept.merge(key, now, (a, b) -> a);
    }
    return List.copyOf(kept.values());
  }

  private static CaseStudy at(CaseStudy study, double times) {
    DesignCase later = study.designCase().withWater(Fraction.ofRatio(times));
    return new CaseStudy(study.survey(), later);
  }

  List<CaseStudy> today() {
    return today;
  }

  /** The cases after so many months. */
  List<CaseStudy> after(double months) {
    List<CaseStudy> later = new ArrayList<>();
    today.forEach(study -> later.add(at(study, times(months))));
    return later;
  }

  private double times(double months) {
    return Math.min(MOST_TIMES, Math.pow(2, months / doubles.in(Unit.MONTH)));
  }

  /**
   * Months until a rate of water is reached.
   *
   * @param title of the working
   * @param limit with its working, in bbl/d
   * @param from today's rate, in bbl/d
   */
  Computed<Time> until(String title, Term limit, Term from, List<Working> workings) {
    double ratio = limit.value() / from.value();
    double months = ratio <= 1 ? 0 : doubles.in(Unit.MONTH) * Math.log(ratio) / Math.log(2);
    return Computed.of(
        Time.of(months, Unit.MONTH),
        () ->
            Working.of(
                    title,
                    "t",
                    ratio <= 1
                        ? "0*Td*" + limit.symbol() + "/" + from.symbol()
                        : "Td*log10(" + limit.symbol() + "/" + from.symbol() + ")/log10(2)",
                    Unit.MONTH,
                    DOUBLING,
                    limit,
                    from,
                    Term.of("Td", "water doubles in", doubles, Unit.MONTH))
                .from(workings));
  }

  /** A month that was found by trying. */
  Computed<Time> found(String title, double months, String how) {
    return Computed.of(
        Time.of(months, Unit.MONTH),
        () ->
            Working.of(
                title,
                "t",
                "Td*n",
                Unit.MONTH,
                DOUBLING,
                Term.of("Td", "water doubles in", doubles, Unit.MONTH),
                Term.number("n", "doublings until " + how, months / doubles.in(Unit.MONTH))));
  }
}
