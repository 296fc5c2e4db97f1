package tankyard.engine.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tankyard.engine.lease.Vessel;

/**
 * Fluid of wells whose temperature nobody typed, followed down its lines and through the vessel
 * into its legs. Such a line is worked as cold as the ground. For its friction that is the hard
 * side, for what plastic pipe stands it is the easy one: the rating is kept, since heat can only
 * lower it, and it is said that heat is not checked.
 */
final class UntypedHeat {
  private static final int MOST_NAMED = 4;

  private final List<String> wells = new ArrayList<>();
  private final Set<String> lines = new HashSet<>();

  private UntypedHeat() {}

  static UntypedHeat of(CaseStudy study, GatheringState gathering) {
    UntypedHeat untyped = new UntypedHeat();
    Set<String> from = new HashSet<>();
    for (String id : gathering.wellIds()) {
      WellFlow well = study.well(id);
      if (well.headK().isEmpty() && well.fluid() > 0) {
        from.add(id);
        untyped.wells.add(well.well().name());
      }
    }
    Downstream below = gathering.downstream(from);
    untyped.lines.addAll(below.lines());
    for (Vessel vessel : study.survey().vessels()) {
      if (below.vessels().contains(vessel.id())) {
        study.waterLegs(vessel).forEach(untyped::add);
        study.oilLegs(vessel).forEach(untyped::add);
      }
    }
    return untyped;
  }

  private void add(LegRun leg) {
    leg.runs().forEach(run -> lines.add(run.laid().id()));
  }

  /** Once for all lines whose pipe heat weakens and whose rating is known. */
  Optional<CaseCaution> caution(Collection<LineRun> runs) {
    List<String> weakened =
        runs.stream()
            .filter(run -> lines.contains(run.laid().id()))
            .filter(run -> run.laid().pipe().material().weakensWithHeat())
            .filter(run -> run.rating().isPresent())
            .map(run -> run.laid().id())
            .toList();
    return weakened.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new CaseCaution(
                "pipe-heat-unknown",
                "Nobody typed how warm the fluid of "
                    + named()
                    + " comes. The pipe is rated as cold as the ground; what heat takes off plastic is"
                    + " not checked. Type the temperature at the wellhead.",
                weakened));
  }

  private String named() {
    if (wells.size() <= MOST_NAMED) {
      return String.join(", ", wells);
    }
    return String.join(", ", wells.subList(0, MOST_NAMED - 1))
        + " and "
        + (wells.size() - MOST_NAMED + 1)
        + " more wells";
  }
}
