package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.wells.RateSteps;
import tankyard.engine.wells.RunningTogether;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The rates of every line that several wells share: which wells those are follows from the ways
 * their fluid takes. A line of a loop is left out, since how it shares with its neighbour changes
 * with what runs.
 *
 * <p>The distribution behind a line is the one behind the busiest line that leads into it with the
 * other wells added: a trunk with a hundred wells strung along it costs a hundred additions, not
 * five thousand.
 */
final class SharedLines {
  private static final double SAME_FLOW = 1e-6;
  private static final Source CONVOLUTION =
      Source.definition("wells that run their hours at times of their own: the chances multiply");

  private final CaseStudy study;
  private final GatheringState state;
  private final Fraction share;
  private final RateSteps steps;
  private final TimerBanks banks;
  private final Map<String, LineRun> runs = new LinkedHashMap<>();
  private final Map<String, List<WellFlow>> behind = new HashMap<>();
  private final Map<String, List<String>> before = new HashMap<>();
  private final Map<String, RunningTogether> together = new HashMap<>();

  private SharedLines(CaseStudy study, GatheringState state) {
    this.study = study;
    this.state = state;
    this.share = Defaults.atOnce(study.lease().practice());
    this.steps =
        RateSteps.of(
            study.wells().stream()
                .filter(w -> w.shareOfDay() < 1)
                .map(WellFlow::whileRunning)
                .toList());
    this.banks = TimerBanks.of(study.wells());
    state.runs().forEach(run -> runs.put(run.laid().id(), run));
    for (String well : state.wellIds()) {
      follow(study.well(well));
    }
  }

  static List<SharedLine> of(CaseStudy study, GatheringState state) {
    return new SharedLines(study, state).all();
  }

  private void follow(WellFlow well) {
    String last = null;
    for (LineRun run : state.wayOf(well.well().id())) {
      String id = run.laid().id();
      behind.computeIfAbsent(id, k -> new ArrayList<>()).add(well);
      List<String> into = before.computeIfAbsent(id, k -> new ArrayList<>());
      if (last != null && !into.contains(last)) {
        into.add(last);
      }
      last = id;
    }
  }

  private List<SharedLine> all() {
    List<String> fewestFirst = new ArrayList<>(behind.keySet());
    fewestFirst.sort(
        Comparator.comparingInt((String id) -> behind.get(id).size())
            .thenComparing(Comparator.naturalOrder()));
    fewestFirst.forEach(id -> together.put(id, spread(id)));
    return runs.values().stream()
        .filter(run -> behind.getOrDefault(run.laid().id(), List.of()).size() > 1)
        .filter(this::carriesThemAlone)
        .map(this::line)
        .toList();
  }

  private RunningTogether spread(String id) {
    Optional<String> busiest =
        before.get(id).stream()
            .filter(together::containsKey)
            .max(Comparator.comparingInt(l -> behind.get(l).size()));
    RunningTogether sum = busiest.map(together::get).orElse(RunningTogether.NONE);
    List<WellFlow> counted = busiest.map(behind::get).orElse(List.of());
    for (WellFlow well : behind.get(id)) {
      if (!counted.contains(well)) {
        double rate = well.whileRunning();
        sum = sum.and(well.shareOfDay() < 1 ? steps.up(rate) : rate, well.shareOfDay());
      }
    }
    return sum;
  }

  /** In a loop some of its wells' fluid goes another way, or other fluid comes in. */
  private boolean carriesThemAlone(LineRun run) {
    double wells = behind.get(run.laid().id()).stream().mapToDouble(WellFlow::fluid).sum();
    double flow = Math.abs(run.flow()) / study.designCase().sharedSurgeFactor();
    return Math.abs(flow - wells) <= SAME_FLOW * wells;
  }

  private SharedLine line(LineRun run) {
    List<WellFlow> wells = behind.get(run.laid().id());
    RunningTogether spread = together.get(run.laid().id());
    double average = wells.stream().mapToDouble(w -> w.oilDay() + w.waterDay()).sum();
    double allOn = wells.stream().mapToDouble(WellFlow::whileRunning).sum();
    double atOnce = Math.min(allOn, spread.notPassed(share.ratio()));
    LineRun atThatRate = at(run, atOnce, "not passed " + percent(share) + " of the time");
    return new SharedLine(
        run.laid().id(),
        wells.stream().map(w -> w.well().id()).toList(),
        share,
        CaseStudy.barrels(average),
        Computed.of(CaseStudy.barrels(atOnce), () -> working(wells, spread, atOnce, allOn)),
        CaseStudy.barrels(allOn),
        Fraction.ofRatio(Math.min(1, spread.chanceOfAllOn())),
        loss(run, average),
        atThatRate.friction(),
        loss(run, allOn),
        staggered(run, wells, allOn));
  }

  private Optional<SharedLine.Staggered> staggered(
      LineRun run, List<WellFlow> wells, double allOn) {
    double peak = banks.peak(wells);
    return peak < allOn * (1 - SAME_FLOW)
        ? Optional.of(
            new SharedLine.Staggered(
                CaseStudy.barrels(peak),
                loss(run, peak),
                banks.of(TimerBanks.Bank.FIRST, wells),
                banks.of(TimerBanks.Bank.SECOND, wells)))
        : Optional.empty();
  }

  private static Pressure loss(LineRun run, double rate) {
    return Pressure.psiFromPascals(at(run, rate, "").march().frictionPascals());
  }

  private static LineRun at(LineRun run, double rate, String words) {
    double flow = run.flow() >= 0 ? rate : -rate;
    return run.at(flow, words);
  }

  static String percent(Fraction share) {
    return AmountText.print(Fraction.ofPercent(share.toPercent()).typed());
  }

  private Working working(
      List<WellFlow> wells, RunningTogether spread, double atOnce, double allOn) {
    String how =
        steps.exact()
            ? "exact"
            : "no well's rate rounded up by more than "
                + Figures.significant(Unit.BARREL_PER_DAY.fromSi(steps.mostOver(1)), 2)
                + " bbl/d";
    return Working.of(
        "Rate not passed " + percent(share) + " of the time",
        "Q",
        "x*Qall",
        Unit.BARREL_PER_DAY,
        CONVOLUTION,
        Term.number(
            "x",
            "share of all on, by adding up every way "
                + wells.size()
                + " wells can run ("
                + how
                + "); passed "
                + Figures.significant(100 * spread.chanceAbove(atOnce), 2)
                + " % of the time",
            allOn == 0 ? 0 : atOnce / allOn),
        Term.of("Qall", "every well on", Unit.BARREL_PER_DAY.fromSi(allOn), Unit.BARREL_PER_DAY));
  }
}
