package tankyard.engine.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.units.LiquidRate;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Time;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * An injection well that another lease pumps into as well, in one case. The pressure at its head
 * follows the rate while both pumps run; how long that is depends on who starts when.
 *
 * @param bothOn wellhead pressure while both leases pump
 * @param mustOverlap hours a day both run, if they take turns as far as the day lasts
 * @param byChance hours a day both run, if neither knows of the other
 * @param together what has to go in over the day, whether or not the pumps have hours enough
 * @param limit of the wellhead, the permit as typed or the screening form, where one is known
 */
public record SharedWell(
    String wellId,
    Computed<Pressure> bothOn,
    Computed<Time> mustOverlap,
    Computed<Time> byChance,
    Computed<LiquidRate> together,
    Optional<Computed<Pressure>> limit) {
  private static final double DAY = 24;
  private static final Source HOURS = Source.definition("a day has 24 hours");
  private static final Source CHANCE =
      Source.definition("shares of the day multiplied, where the two start apart");

  /** Of every well that stays, that another lease pumps into and a pump of this one reaches. */
  static List<SharedWell> of(CaseStudy study, List<InjectionResult> injections) {
    Map<String, List<InjectionResult>> byWell = new LinkedHashMap<>();
    injections.forEach(i -> byWell.computeIfAbsent(i.wellId(), id -> new ArrayList<>()).add(i));
    List<SharedWell> found = new ArrayList<>();
    for (InjectionWell well : study.lease().injectionWells()) {
      List<InjectionResult> ours = byWell.getOrDefault(well.id(), List.of());
      if (!ours.isEmpty()) {
        well.otherRate().map(rate -> of(well, rate, ours)).ifPresent(found::add);
      }
    }
    return found;
  }

  private static SharedWell of(InjectionWell well, LiquidRate theirs, List<InjectionResult> pumps) {
    double ours = pumps.stream().mapToDouble(i -> i.intoWell().toBarrelsPerDay()).sum();
    double wantedHours =
        pumps.stream().mapToDouble(i -> i.hours().value().toHours()).max().orElse(0);
    double ourHours = Math.min(DAY, wantedHours);
    double theirHours = well.otherHours().orElse(Defaults.OTHER_HOURS).toHours();
    LiquidRate both = LiquidRate.ofBarrelsPerDay(ours + theirs.toBarrelsPerDay());
    return new SharedWell(
        well.id(),
        InjectionNet.law(well).wellhead(both),
        hours(
            "Hours both leases must pump at once",
            "max(h1+h2-24,0)",
            Math.max(ourHours + theirHours - DAY, 0),
            HOURS,
            ourHours,
            theirHours),
        hours(
            "Hours both leases pump at once by chance",
            "h1*h2/24",
            ourHours * theirHours / DAY,
            CHANCE,
            ourHours,
            theirHours),
        together(ours, theirs.toBarrelsPerDay(), wantedHours, theirHours),
        pumps.get(0).limit());
  }

  private static Computed<Time> hours(
      String title, String formula, double value, Source source, double ours, double theirs) {
    return Computed.of(
        Time.ofHours(value),
        () ->
            Working.of(
                title,
                "h",
                formula,
                Unit.HOUR,
                source,
                Term.of("h1", "this lease pumps", ours, Unit.HOUR),
                Term.of("h2", "the other lease pumps", theirs, Unit.HOUR)));
  }

  private static Computed<LiquidRate> together(
      double ours, double theirs, double ourHours, double theirHours) {
    return Computed.of(
        LiquidRate.ofBarrelsPerDay((ours * ourHours + theirs * theirHours) / DAY),
        () ->
            Working.of(
                "Water into the well in a day, both leases",
                "Q",
                "(q1*h1+q2*h2)/24",
                Unit.BARREL_PER_DAY,
                HOURS,
                Term.of("q1", "this lease while it pumps", ours, Unit.BARREL_PER_DAY),
                Term.of("h1", "this lease pumps", ourHours, Unit.HOUR),
                Term.of("q2", "the other lease while it pumps", theirs, Unit.BARREL_PER_DAY),
                Term.of("h2", "the other lease pumps", theirHours, Unit.HOUR)));
  }
}
