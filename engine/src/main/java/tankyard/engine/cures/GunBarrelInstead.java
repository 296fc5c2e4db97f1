package tankyard.engine.cures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.GunBarrelBuilder;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.LeaseBuilder;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Status;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.study.WellResult;
import tankyard.engine.tanks.Overflow;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;

/**
 * The lease with a gun barrel where the separator stands, worked out like any other: side by side
 * in psi on the wells, in money and in what is left to mend.
 */
final class GunBarrelInstead {
  static final Length SHELL = Length.ofFeet(20);
  static final Length OIL_OUTLET = Length.ofFeet(18);
  static final Length INTERFACE = Length.ofFeet(10);
  private static final Length DIAMETER = Length.ofFeet(10);

  private final CureSite site;
  private final Pipe leg;

  private GunBarrelInstead(CureSite site, Pipe leg) {
    this.site = site;
    this.leg = leg;
  }

  /** Empty where nobody knows a pipe for its leg. */
  static Optional<String> of(CureSite site, Trial trial, Trial.Worked today) {
    return pipe(site).map(p -> new GunBarrelInstead(site, p).words(trial, today));
  }

  /** The smallest size of steel pipe whose downcomer swallows the surge, or else the biggest. */
  private static Optional<Pipe> pipe(CureSite site) {
    double most =
        site.cases().stream().mapToDouble(c -> surge(c, site.separator())).max().orElse(0);
    List<Pipe> steel =
        site.catalog().list(Pipe.class).stream()
            .filter(p -> p.material() == Material.STEEL)
            .toList();
    List<Pipe> thin =
        steel.stream().filter(p -> steel.stream().noneMatch(q -> thinner(q, p))).toList();
    return thin.stream()
        .filter(p -> new Overflow(p.bore()).selfVenting().value().toBarrelsPerDay() >= most)
        .findFirst()
        .or(() -> thin.stream().max(Comparator.comparingDouble(p -> p.bore().metres())));
  }

  private static double surge(CaseStudy study, Separator separator) {
    double all = study.allOil().toBarrelsPerDay() + study.allWater().toBarrelsPerDay();
    return Math.max(all, study.designWater(separator).value().toBarrelsPerDay());
  }

  private static boolean thinner(Pipe one, Pipe other) {
    return one.nominal().compareTo(other.nominal()) == 0
        && one.bore().metres() > other.bore().metres();
  }

  /** The same lease; its lines go where they went, since the gun barrel takes over the id. */
  Lease lease() {
    Separator old = site.separator();
    List<GunBarrel> barrels = new ArrayList<>(site.lease().gunBarrels());
    barrels.add(
        GunBarrelBuilder.builder()
            .id(old.id())
            .name("Gun barrel")
            .at(old.at())
            .ground(old.ground())
            .status(Status.NEW)
            .diameter(DIAMETER)
            .shellHeight(SHELL)
            .inletHeight(SHELL)
            .oilOutletHeight(OIL_OUTLET)
            .interfaceHeight(INTERFACE)
            .legPipe(leg.id())
            .build());
    return LeaseBuilder.builder(site.lease())
        .separators(site.lease().separators().stream().filter(s -> s != old).toList())
        .gunBarrels(barrels)
        .build();
  }

  private String words(Trial trial, Trial.Worked today) {
    Trial.Worked then = trial.work(lease());
    return "A gun barrel of 10 ft x 20 ft in place of "
        + site.separator().name()
        + ", its leg of "
        + leg.name()
        + ", worked out: "
        + boxes(today, then)
        + money(today, then)
        + "stop and fix findings "
        + then.toMend()
        + ", now "
        + today.toMend()
        + first(then)
        + ". Taking the separator out is in no bill.";
  }

  private String boxes(Trial.Worked today, Trial.Worked then) {
    Optional<WellResult> now = worst(today);
    return worst(then)
        .map(
            w ->
                "the boxes feel at most "
                    + psi(w)
                    + now.map(n -> ", now " + psi(n) + " with the gauge at its setting").orElse("")
                    + "; ")
        .orElse("");
  }

  private Optional<WellResult> worst(Trial.Worked worked) {
    return worked.cases().stream()
        .flatMap(c -> c.wells().stream())
        .filter(w -> w.separatorId().equals(site.separator().id()))
        .max(Comparator.comparingDouble(w -> w.box().value().pascals()));
  }

  private String psi(WellResult well) {
    return Figures.significant(well.box().value().toPsi(), 3)
        + " psi ("
        + site.lease().thing(well.wellId()).orElseThrow().name()
        + ")";
  }

  private static String money(Trial.Worked today, Trial.Worked then) {
    BigDecimal more = then.bill().totals().total().subtract(today.bill().totals().total());
    int unpriced = then.bill().totals().unpriced();
    String by =
        Figures.grouped(more.abs().setScale(0, RoundingMode.HALF_UP).doubleValue())
            + " "
            + then.bill().totals().currency();
    String change = more.signum() < 0 ? "the bill is less by " + by : "the bill is more by " + by;
    return change + (unpriced > 0 ? ", without " + unpriced + " unpriced lines" : "") + "; ";
  }

  /** What stands against it first, if anything of its own does. */
  private static String first(Trial.Worked then) {
    return then.findings().stream()
        .filter(f -> f.id().startsWith("gun-barrel-"))
        .findFirst()
        .map(f -> ". First of its own: " + f.words().replaceAll("\\.$", ""))
        .orElse("");
  }
}
