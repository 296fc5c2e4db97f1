package tankyard.engine.cures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.study.LineRun;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;

/**
 * Another route round the hill that sets the least: what it could save at most, and what every
 * hundred feet of detour cost in psi and in money. Which way round there is only the ground tells.
 */
final class RoundTheHill {
  private static final double DETOUR_FT = 100;

  private final CureSite site;
  private final PressureLimit crest;
  private final LineRun run;

  private RoundTheHill(CureSite site, PressureLimit crest, LineRun run) {
    this.site = site;
    this.crest = crest;
    this.run = run;
  }

  /** Empty where no crest sets the least. */
  static Optional<String> of(CureSite site, Trial trial, Trial.Worked today) {
    return site.window()
        .least()
        .filter(least -> least.crest().isPresent())
        .flatMap(
            least ->
                site.leg(least).stream()
                    .flatMap(leg -> leg.runs().stream())
                    .filter(r -> r.laid().id().equals(least.thingId()))
                    .findFirst()
                    .map(r -> new RoundTheHill(site, least, r).words(trial, today)));
  }

  private String words(Trial trial, Trial.Worked today) {
    return "Another route round the hill: draw it, and see. "
        + saves()
        + " Every "
        + Figures.significant(DETOUR_FT, 3)
        + " ft more of "
        + run.laid().line().name()
        + " ask for "
        + Figures.significant(psiForDetour(), 2)
        + " psi more and "
        + money(trial, today)
        + "; every foot lower at the crest is 0.4331 psi x the gravity of the brine.";
  }

  /** What sets the least once no crest is left, and which are left once this one is gone. */
  private String saves() {
    return site.window().needed().stream()
        .filter(l -> l.crest().isEmpty())
        .findFirst()
        .map(floor -> othersAbove(floor) + saves(floor))
        .orElse("");
  }

  private String saves(PressureLimit floor) {
    return "Without a crest, the leg as long as it is, the least would be "
        + psi(floor.gauge().value().toPsi())
        + " ("
        + floor.name()
        + ") instead of "
        + psi(crest.gauge().value().toPsi())
        + ": no way round saves more than "
        + psi(crest.gauge().value().toPsi() - floor.gauge().value().toPsi())
        + ".";
  }

  private String othersAbove(PressureLimit floor) {
    List<String> others =
        site.window().needed().stream()
            .filter(l -> l.crest().isPresent() && !l.name().equals(crest.name()))
            .filter(l -> l.gauge().value().pascals() > floor.gauge().value().pascals())
            .map(l -> "the " + l.name() + " with " + psi(l.gauge().value().toPsi()))
            .toList();
    return others.isEmpty()
        ? ""
        : "Once round that crest there remain " + String.join(", ", others) + ". ";
  }

  private double psiForDetour() {
    double lossPa = run.laid().law().friction(run.liquid().liquid()).drop(run.flow()).pascals();
    double feet = Unit.FOOT.fromSi(run.laid().law().lengthM());
    return Unit.PSI.fromSi(Math.abs(lossPa)) / feet * DETOUR_FT;
  }

  /** By the bill, its trench and waste included. */
  private String money(Trial trial, Trial.Worked today) {
    Trial.Worked then = trial.work(longer(site.lease()));
    BigDecimal more = then.bill().totals().total().subtract(today.bill().totals().total());
    return more.signum() <= 0
        ? "pipe and trench that nobody priced"
        : Figures.grouped(more.setScale(0, RoundingMode.HALF_UP).doubleValue())
            + " "
            + then.bill().totals().currency()
            + " more of what is priced";
  }

  private Lease longer(Lease lease) {
    Line line = run.laid().line();
    double feet = Unit.FOOT.fromSi(run.laid().trenchM()) + DETOUR_FT;
    return lease.with(line.withLength(Optional.of(Length.ofFeet(feet))));
  }

  /** Up, as every least is shown; and what a way round saves is at most that. */
  private static String psi(double psi) {
    return Figures.decimals(Rounding.UP.round(psi, 1), 1) + " psi";
  }
}
