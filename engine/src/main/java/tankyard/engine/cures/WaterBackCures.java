package tankyard.engine.cures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.LineBuilder;
import tankyard.engine.lease.RoutePoint;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Well;
import tankyard.engine.lease.WellBuilder;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.Defaults;
import tankyard.engine.study.LineRun;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Fraction;
import tankyard.engine.units.LiquidRate;

/**
 * Produced water brought back to the wells, so much that the water carries the oil: the cut at
 * which it starts to, and a tenth more. By a small line beside the flow lines, or by truck.
 */
final class WaterBackCures {
  /** Close to the turn the mixture may be either, as the emulsion's caution says. */
  private static final double CLEAR_OF_THE_TURN = 0.1;

  private static final double MOST_CUT = 0.95;
  private static final double LEAST_LOSS_PA = 7000;
  private static final NominalSize SMALLEST = NominalSize.ofInches(1);

  private WaterBackCures() {}

  static List<Cure> of(CureSite site) {
    Set<String> thick = thickWells(site);
    Optional<Tank> tank = waterTank(site);
    if (thick.isEmpty() || tank.isEmpty()) {
      return List.of();
    }
    double cut = Math.min(MOST_CUT, turn(site.lease()) + CLEAR_OF_THE_TURN);
    List<Well> wells =
        site.lease().wells().stream()
            .filter(w -> thick.contains(w.id()) && missing(w, cut) > 0)
            .toList();
    if (wells.isEmpty()) {
      return List.of();
    }
    double rate = wells.stream().mapToDouble(w -> missing(w, cut)).sum();
    String words =
        Figures.significant(rate, 3)
            + " bbl/d of produced water brought back to "
            + wells.size()
            + (wells.size() == 1 ? " well" : " wells")
            + ", which makes "
            + Figures.significant(100 * cut, 2)
            + " % water";
    UnaryOperator<Lease> water = lease -> watered(lease, wells, cut);
    return List.of(
        new Cure(
            "water-back",
            tank.get().id(),
            words + ", in a small line",
            "It passes the separator again and again. The return's pump is not in the bill.",
            CureResult.Billing.PART,
            lease -> lined(water.apply(lease), site, tank.get(), thick)),
        new Cure(
            "water-back-by-truck",
            tank.get().id(),
            words + ", by truck",
            "Nothing to buy; "
                + Figures.significant(rate, 3)
                + " bbl to haul every day, and a tank"
                + " with a small pump at the wells, are not in the bill.",
            CureResult.Billing.DAILY,
            water));
  }

  /** Wells of this separator on whose way some cold line of oil loses pressure worth the name. */
  private static Set<String> thickWells(CureSite site) {
    return site.cases().stream()
        .flatMap(study -> thickWells(study, site).stream())
        .collect(Collectors.toSet());
  }

  private static List<String> thickWells(CaseStudy study, CureSite site) {
    return site.lease().wells().stream()
        .map(Well::id)
        .filter(
            id ->
                study
                    .load(id, study.unloaded(), site.separator())
                    .filter(l -> l.way().stream().anyMatch(r -> isThick(study, r)))
                    .isPresent())
        .toList();
  }

  private static boolean isThick(CaseStudy study, LineRun run) {
    return study.unloaded().oilCarries(run) && run.march().frictionPascals() > LEAST_LOSS_PA;
  }

  private static double turn(Lease lease) {
    return lease.fluids().inversion().map(Fraction::ratio).orElse(Defaults.INVERSION.ratio());
  }

  /** Barrels a day to bring back to a well. */
  private static double missing(Well well, double cut) {
    double oil = well.oil().toBarrelsPerDay();
    return Math.max(0, oil * cut / (1 - cut) - well.water().toBarrelsPerDay());
  }

  private static Lease watered(Lease lease, List<Well> wells, double cut) {
    Lease changed = lease;
    for (Well well : wells) {
      LiquidRate back = LiquidRate.ofBarrelsPerDay(missing(well, cut));
      changed = changed.with(WellBuilder.builder(well).returnedWater(Optional.of(back)).build());
    }
    return changed;
  }

  private static Optional<Tank> waterTank(CureSite site) {
    return site.cases().get(0).waterLegs(site.separator()).stream()
        .map(leg -> leg.tank())
        .findFirst();
  }

  /** Beside every flow line on the wells' ways a small line that runs the other way. */
  private static Lease lined(Lease lease, CureSite site, Tank tank, Set<String> thick) {
    CaseStudy study = site.cases().get(0);
    Lease changed = lease;
    Set<Line> ways =
        thick.stream()
            .flatMap(id -> study.load(id, study.unloaded(), site.separator()).stream())
            .flatMap(l -> l.way().stream())
            .map(r -> r.laid().line())
            .collect(Collectors.toSet());
    for (Line line : lease.lines()) {
      if (ways.contains(line)) {
        changed = changed.with(back(line, site, tank));
      }
    }
    return changed;
  }

  private static Line back(Line line, CureSite site, Tank tank) {
    List<RoutePoint> route = new ArrayList<>(line.route());
    Collections.reverse(route);
    String from = line.to().equals(site.separator().id()) ? tank.id() : line.to();
    return LineBuilder.builder(line)
        .id("water-return-" + line.id())
        .name("Water return beside " + line.name())
        .service(Service.WATER_RETURN)
        .from(from)
        .to(line.from())
        .route(route)
        .pipe(small(site, line))
        .fittings(List.of())
        .fittingLength(Optional.empty())
        .status(Status.NEW)
        .build();
  }

  private static String small(CureSite site, Line line) {
    return site.catalog().list(Pipe.class).stream()
        .filter(p -> p.material() == Material.POLYETHYLENE)
        .filter(p -> p.nominal().compareTo(SMALLEST) >= 0)
        .min(Comparator.comparingDouble(p -> p.bore().metres()))
        .map(Pipe::id)
        .orElse(line.pipe());
  }
}
