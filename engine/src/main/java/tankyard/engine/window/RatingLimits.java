package tankyard.engine.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.Separator;
import tankyard.engine.study.CaseStudy;
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
  private static final double SAME_PA = 10;
  private static final int MOST_TRIES = 8;
  private static final Source SOURCE =
      Source.definition("rating less what height and line loss add at its lowest end");

  private final CaseStudy study;
  private final Separator separator;

  RatingLimits(CaseStudy study, Separator separator) {
    this.study = study;
    this.separator = separator;
  }

  List<PressureLimit> all() {
    double trialPa = TRIAL_PA;
    List<PressureLimit> found = at(trialPa);
    // With gas what the lines add depends on the reading: the governing limit is sought.
    for (int i = 0; i < MOST_TRIES && study.hasGas() && !found.isEmpty(); i++) {
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

  private List<PressureLimit> at(double trialPa) {
    List<PressureLimit> found = new ArrayList<>();
    for (LineRun run : study.gatheringAt(Map.of(separator.id(), trialPa)).runs()) {
      run.rating().ifPresent(rating -> found.add(limit(run, rating, trialPa)));
    }
    return found;
  }

  private PressureLimit limit(LineRun run, Computed<Pressure> rating, double trialPa) {
    double addedPa = run.highestPa() - trialPa;
    double frictionPa = Math.max(0, Math.min(run.march().frictionPascals(), addedPa));
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
                        "R-a",
                        Unit.PSI,
                        SOURCE,
                        Term.of("R", "rating with oil inside", rating.value(), Unit.PSI),
                        Term.of(
                            "a",
                            "highest pressure along it over the gauge",
                            Unit.PSI.fromSi(addedPa),
                            Unit.PSI))
                    .from(List.of(rating.working()))),
        Pressure.psiFromPascals(addedPa - frictionPa),
        Pressure.psiFromPascals(frictionPa),
        nothing,
        nothing,
        Optional.empty());
  }
}
