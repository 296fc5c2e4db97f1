package tankyard.engine.study;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
  private static final int NONE = -1;
  private static final double SAME_FLOW = 1e-6;
  private static final Source CONVOLUTION =
      Source.definition("wells that run their hours at times of their own: the chances multiply");

  private final CaseStudy study;
  private final GatheringState state;
  private final Fraction share;
  private final String sharePercent;
  private final RateSteps steps;
  private final TimerBanks banks;

  /** Those that make something: the others share nothing. */
  private final List<WellFlow> wells;

  /** Wells whose way takes each line, all by number. */
  private final BitSet[] behind;

  /** Lines from which wells come into each line. */
  private final BitSet[] before;

  private final RunningTogether[] together;

  private SharedLines(CaseStudy study, GatheringState state) {
    this.study = study;
    this.state = state;
    this.share = Defaults.atOnce(study.lease().practice());
    this.sharePercent = percent(share);
    this.steps =
        RateSteps.of(
            study.wells().stream().filter(w -> w.shareOfDay() < 1).map(WellFlow::pumped).toList());
    this.banks = TimerBanks.of(study.wells());
    int lines = state.runs().size();
    this.together = new RunningTogether[lines];
    this.behind = Stream.generate(BitSet::new).limit(lines).toArray(BitSet[]::new);
    this.before = Stream.generate(BitSet::new).limit(lines).toArray(BitSet[]::new);
    this.wells =
        state.wellIds().stream().map(study::well).filter(WellFlow::makesSomething).toList();
    for (int well = 0; well < wells.size(); well++) {
      follow(well);
    }
  }

  static List<SharedLine> of(CaseStudy study, GatheringState state) {
    return new SharedLines(study, state).all();
  }

  private void follow(int well) {
    int last = NONE;
    for (int line : state.lineNumbersOf(wells.get(well).well().id())) {
      behind[line].set(well);
      if (last != NONE) {
        before[line].set(last);
      }
      last = line;
    }
  }

  private List<SharedLine> all() {
    IntStream.range(0, together.length)
        .boxed()
        .sorted(Comparator.comparingInt(this::wellsOn))
        .forEach(line -> together[line] = spread(line));
    return IntStream.range(0, together.length)
        .filter(line -> wellsOn(line) > 1)
        .filter(this::carriesThemAlone)
        .mapToObj(this::line)
        .toList();
  }

  /** What its wells make at once: those of the busiest line into it are added up already. */
  private RunningTogether spread(int line) {
    int busiest =
        before[line].stream()
            .filter(into -> together[into] != null)
            .reduce(NONE, (a, b) -> a == NONE || wellsOn(b) > wellsOn(a) ? b : a);
    RunningTogether sum = busiest == NONE ? RunningTogether.NONE : together[busiest];
    BitSet open = (BitSet) behind[line].clone();
    if (busiest != NONE) {
      open.andNot(behind[busiest]);
    }
    for (WellFlow well : wells(open)) {
      double rate = well.pumped();
      sum = sum.and(well.shareOfDay() < 1 ? steps.up(rate) : rate, well.shareOfDay());
      sum = well.returned() > 0 ? sum.and(well.returned(), 1) : sum;
    }
    return sum;
  }

  private int wellsOn(int line) {
    return behind[line].cardinality();
  }

  private List<WellFlow> wells(BitSet numbers) {
    return numbers.stream().mapToObj(wells::get).toList();
  }

  /** In a loop some of its wells' fluid goes another way, or other fluid comes in. */
  private boolean carriesThemAlone(int line) {
    double ofWells = wells(behind[line]).stream().mapToDouble(WellFlow::fluid).sum();
    double flow = Math.abs(state.runs().get(line).flow()) / study.designCase().sharedSurgeFactor();
    return Math.abs(flow - ofWells) <= SAME_FLOW * ofWells;
  }

  private SharedLine line(int number) {
    LineRun run = state.runs().get(number);
    List<WellFlow> some = wells(behind[number]);
    RunningTogether spread = together[number];
    double average = some.stream().mapToDouble(WellFlow::dayAverage).sum();
    double allOn = some.stream().mapToDouble(WellFlow::whileRunning).sum();
    double atOnce = Math.min(allOn, spread.notPassed(share.ratio()));
    LineRun atThatRate = at(run, atOnce, "not passed " + sharePercent + " of the time");
    return new SharedLine(
        run.laid().id(),
        some.stream().map(w -> w.well().id()).toList(),
        share,
        CaseStudy.barrels(average),
        Computed.of(CaseStudy.barrels(atOnce), () -> working(some, spread, atOnce, allOn)),
        CaseStudy.barrels(allOn),
        Fraction.ofRatio(Math.min(1, spread.chanceOfAllOn())),
        loss(run, average),
        atThatRate.friction(),
        loss(run, allOn),
        staggered(run, some, allOn));
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
        "Rate not passed " + sharePercent + " of the time",
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
