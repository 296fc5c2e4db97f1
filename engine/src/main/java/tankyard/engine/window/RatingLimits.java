package tankyard.engine.window;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.GatheringState;
import tankyard.engine.study.LineRun;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/** The most the gauge may read before a flow line passes its rating, with oil inside. */
final class RatingLimits {
  private static final double TRIAL_PA = Unit.PSI.toSi(50);

  /** So much that no crest keeps the gauge's pressure from a line. */
  private static final double DROWNED_PA = Unit.PSI.toSi(5000);

  private static final double SAME_PA = 10;
  private static final int MOST_TRIES = 8;
  private static final Source SOURCE =
      Source.definition(
          "rating less lift and line loss from its highest-pressed point to the gauge");

  private final CaseStudy study;
  private final Separator separator;

  RatingLimits(CaseStudy study, Separator separator) {
    this.study = study;
    this.separator = separator;
  }

  List<PressureLimit> all() {
    if (!study.hasGas()) {
      return withoutThoseOverAnyway(at(DROWNED_PA));
    }
    double trialPa = TRIAL_PA;
    List<PressureLimit> found = at(trialPa);
    // With gas what the lines add depends on the reading: the governing limit is sought.
    for (int i = 0; i < MOST_TRIES && !found.isEmpty(); i++) {
      double governing =
          found.stream().mapToDouble(l -> l.gauge().value().pascals()).min().orElseThrow();
      double next = Math.max(0, governing);
      if (Math.abs(next - trialPa) < SAME_PA) {
        break;
      }
      trialPa = next;
      found = at(trialPa);
    }
    return found;
  }

  /**
   * A line that its own crest presses past its rating with no reading at all is none of the gauge's
   * limits; it is a finding.
   */
  private List<PressureLimit> withoutThoseOverAnyway(List<PressureLimit> limits) {
    Set<String> over = new HashSet<>();
    for (LineRun run : study.gatheringAt(Map.of(separator.id(), 0.0)).runs()) {
      run.rating()
          .filter(r -> run.march().isCut() && run.highestPa() > r.value().pascals())
          .ifPresent(r -> over.add(run.laid().id()));
    }
    return limits.stream().filter(l -> !over.contains(l.thingId())).toList();
  }

  private List<PressureLimit> at(double trialPa) {
    GatheringState state = study.gatheringAt(Map.of(separator.id(), trialPa));
    List<PressureLimit> found = new ArrayList<>();
    for (LineRun run : state.runs()) {
      boolean elsewhere = state.endOf(run).filter(end -> !end.equals(separator.id())).isPresent();
      if (!elsewhere) {
        run.rating().ifPresent(r -> found.add(limit(run, r, trialPa, state.wayOn(run))));
      }
    }
    return found;
  }

  private PressureLimit limit(
      LineRun run, Computed<Pressure> rating, double trialPa, List<LineRun> way) {
    double addedPa = run.highestPa() - trialPa;
    double frictionPa = lossPa(way);
    Pressure gauge = Pressure.ofPsi(rating.value().toPsi() - Unit.PSI.fromSi(addedPa));
    Pressure nothing = Pressure.ofPsi(0);
    return new PressureLimit(
        PressureLimit.Kind.PIPE_RATING,
        run.laid().id(),
        run.laid().line().name() + "'s pipe rating",
        Optional.empty(),
        study.designCase().id(),
        Computed.of(
            gauge,
            () ->
                Working.of(
                        "Most gauge reading: pipe rating of " + run.laid().line().name(),
                        "P",
                        "R-z-f",
                        Unit.PSI,
                        SOURCE,
                        Term.of("R", "rating with oil inside", rating.value(), Unit.PSI),
                        Term.of(
                            "z",
                            "lift from its highest-pressed point to the gauge",
                            Unit.PSI.fromSi(addedPa - frictionPa),
                            Unit.PSI),
                        Term.of(
                            "f",
                            "line loss from there to the separator",
                            Unit.PSI.fromSi(frictionPa),
                            Unit.PSI))
                    .from(List.of(rating.working()))),
        Pressure.psiFromPascals(addedPa - frictionPa),
        Pressure.psiFromPascals(frictionPa),
        nothing,
        nothing,
        Optional.empty());
  }

  /** Of the whole way from the line's highest-pressed point; a crest cuts off what comes after. */
  private static double lossPa(List<LineRun> way) {
    double loss = 0;
    for (int i = way.size() - 1; i >= 0; i--) {
      LineRun run = way.get(i);
      boolean crest = run.march().control().isPresent();
      loss =
          (crest ? 0 : loss) + (i == 0 ? run.lossFromHighestPa() : run.march().frictionPascals());
    }
    return loss;
  }
}
