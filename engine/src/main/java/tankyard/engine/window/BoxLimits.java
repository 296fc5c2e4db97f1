package tankyard.engine.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Well;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.GatheringState;
import tankyard.engine.study.WellLoad;
import tankyard.engine.units.Pressure;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * The most the gauge may read before a stuffing box passes its limit: the limit less what height
 * and line loss add on the way from the well.
 */
final class BoxLimits {
  private static final double CLOSE_PA = 1;
  private static final double SAME_PA = 0.1;
  private static final int MOST_TRIES = 40;
  private static final Source SOURCE =
      Source.definition("box limit less lift and line loss from the well to the gauge");

  private final CaseStudy study;
  private final Separator separator;

  BoxLimits(CaseStudy study, Separator separator) {
    this.study = study;
    this.separator = separator;
  }

  List<PressureLimit> all() {
    List<Well> limited =
        study.lease().wells().stream()
            .filter(w -> w.status().stays() && w.boxLimit().isPresent())
            .toList();
    if (limited.isEmpty()) {
      return List.of();
    }
    // At a high reading no line runs part full, and what the way adds does not depend on it.
    double high = limited.stream().mapToDouble(w -> w.boxLimit().get().pascals()).max().orElse(0);
    GatheringState full = study.gatheringAt(Map.of(separator.id(), high));
    GatheringState none = study.unloaded();
    List<PressureLimit> found = new ArrayList<>();
    for (Well well : limited) {
      Optional<WellLoad> load = study.load(well.id(), full, separator);
      load.map(l -> l.followsGauge() ? atItsLimit(well, l) : l)
          .ifPresent(l -> found.add(limit(well, l, none.boxPa(well.id()))));
    }
    return found;
  }

  /**
   * With gas what the way adds falls as the pressure grows, so the reading that brings the box to
   * its limit is sought: each try takes what the way added at the one before.
   */
  private WellLoad atItsLimit(Well well, WellLoad first) {
    double limitPa = well.boxLimit().orElseThrow().pascals();
    WellLoad before = first;
    WellLoad load = first;
    double gaugePa = Double.NaN;
    for (int i = 0; i < MOST_TRIES; i++) {
      double next = Math.max(0, limitPa - load.addedPa());
      if (Math.abs(next - gaugePa) < SAME_PA) {
        return load;
      }
      gaugePa = next;
      before = load;
      load = study.loadAt(load, separator, gaugePa);
    }
    // Where the hold-up jumps there may be no such reading: the harder side of the jump counts.
    return before.addedPa() > load.addedPa() ? before : load;
  }

  /**
   * The limit of one box.
   *
   * @param atNothingPa its pressure with the gauge at zero: where a crest alone passes the limit no
   *     reading helps
   */
  private PressureLimit limit(Well well, WellLoad load, double atNothingPa) {
    double limitPa = well.boxLimit().orElseThrow().pascals();
    double addedPa = load.addedPa();
    boolean crestAlonePasses =
        atNothingPa > limitPa && atNothingPa > Math.max(0, addedPa) + CLOSE_PA;
    double gaugePa = limitPa - addedPa;
    double readingPa = crestAlonePasses ? Math.min(gaugePa, limitPa - atNothingPa) : gaugePa;
    return new PressureLimit(
        PressureLimit.Kind.STUFFING_BOX,
        well.id(),
        well.name() + "'s stuffing box",
        Optional.empty(),
        study.designCase().id(),
        Computed.of(
            Pressure.psiFromPascals(readingPa), () -> working(well, load, limitPa - readingPa)),
        Pressure.psiFromPascals(limitPa - readingPa - load.frictionPa()),
        Pressure.psiFromPascals(load.frictionPa()),
        Pressure.ofPsi(0),
        Pressure.ofPsi(0),
        band(load));
  }

  private Optional<Pressure> band(WellLoad load) {
    return study
        .lease()
        .site()
        .heightAccuracy()
        .map(a -> Pressure.psiFromPascals(load.liquid().staticPascals(a.metres())));
  }

  private static Working working(Well well, WellLoad load, double addedPa) {
    return Working.of(
            "Most gauge reading: " + well.name() + "'s stuffing box",
            "P",
            "L-z-f",
            Unit.PSI,
            SOURCE,
            Term.of("L", "limit of the box", well.boxLimit().orElseThrow(), Unit.PSI),
            Term.of(
                "z",
                "lift from the box to the gauge",
                Unit.PSI.fromSi(addedPa - load.frictionPa()),
                Unit.PSI),
            Term.of("f", "line loss", Unit.PSI.fromSi(load.frictionPa()), Unit.PSI))
        .from(load.workings());
  }
}
