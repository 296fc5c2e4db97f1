package tankyard.engine.cures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Separator;
import tankyard.engine.pricing.Bill;
import tankyard.engine.study.CaseStudy;
import tankyard.engine.units.Pressure;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** Tries one change of the lease after the other and tells what each does, best first. */
public final class CureFinder {
  /** What gains less and mends nothing is not told. */
  private static final double WORTH_PSI = 0.05;

  private static final Comparator<CureResult> BEST_FIRST =
      Comparator.comparingInt(CureResult::toMend)
          .thenComparing(c -> c.unpriced() > 0)
          .thenComparing(CureResult::billing)
          .thenComparingDouble(CureResult::costPerPsi)
          .thenComparing(CureResult::gained, Comparator.comparing(Pressure::pascals).reversed());

  private final Lease lease;
  private final Trial trial;
  private final Trial.Worked today;

  private CureFinder(Lease lease, Trial trial, Trial.Worked today) {
    this.lease = lease;
    this.trial = trial;
    this.today = today;
  }

  /**
   * What would help each separator.
   *
   * @param cases of the lease as it is
   * @param trial works out a changed lease
   */
  public static List<CureBook> find(List<CaseStudy> cases, Trial trial) {
    if (cases.isEmpty()) {
      return List.of();
    }
    Lease lease = cases.get(0).lease();
    CureFinder finder = new CureFinder(lease, trial, trial.work(lease));
    List<CureBook> books = new ArrayList<>();
    for (Separator separator : cases.get(0).survey().separators()) {
      finder
          .today
          .window(separator.id())
          .map(w -> finder.book(new CureSite(separator, w, cases)))
          .ifPresent(books::add);
    }
    return List.copyOf(books);
  }

  private CureBook book(CureSite site) {
    List<Cure> cures = new ArrayList<>();
    cures.addAll(VesselCures.of(site));
    cures.addAll(LegCures.of(site));
    cures.addAll(TrenchCures.of(site));
    cures.addAll(TankCures.of(site));
    cures.addAll(WaterBackCures.of(site));
    Window window = site.window();
    return new CureBook(
        window.separatorId(),
        window.separatorName(),
        gauge(window.least()),
        gauge(window.most()),
        room(window),
        today.toMend(),
        cures.stream().map(c -> result(c, window)).filter(this::helps).sorted(BEST_FIRST).toList(),
        others(site),
        TankReaches.of(site),
        LevelNeeds.of(site),
        today.bill().totals().currency());
  }

  private List<String> others(CureSite site) {
    List<String> ways = new ArrayList<>(OtherWays.of(site));
    RoundTheHill.of(site, trial, today).ifPresent(ways::add);
    GunBarrelInstead.of(site, trial, today).ifPresent(ways::add);
    TankReaches.leftOut(site).ifPresent(ways::add);
    return ways;
  }

  private CureResult result(Cure cure, Window before) {
    Trial.Worked then = trial.work(cure.edit().apply(lease));
    Optional<Window> window = then.window(before.separatorId());
    Bill bill = then.bill();
    return new CureResult(
        cure.id(),
        cure.thingId(),
        cure.words(),
        cure.care(),
        window.flatMap(w -> gauge(w.least())),
        window.flatMap(w -> gauge(w.most())),
        window.flatMap(CureFinder::room),
        gained(before, window),
        then.toMend(),
        cost(bill),
        Math.max(0, bill.totals().unpriced() - today.bill().totals().unpriced()),
        cure.billing());
  }

  private BigDecimal cost(Bill bill) {
    return bill.totals().total().subtract(today.bill().totals().total());
  }

  private static Pressure gained(Window before, Optional<Window> after) {
    if (after.isEmpty()) {
      return Pressure.ofPsi(0);
    }
    Optional<Pressure> roomNow = room(before);
    Optional<Pressure> roomThen = room(after.get());
    double psi =
        roomNow.isPresent() && roomThen.isPresent()
            ? roomThen.get().toPsi() - roomNow.get().toPsi()
            : psi(before.least()) - psi(after.get().least());
    return Pressure.ofPsi(psi);
  }

  private boolean helps(CureResult cure) {
    return cure.gained().toPsi() >= WORTH_PSI || cure.toMend() < today.toMend();
  }

  private static Optional<Pressure> gauge(Optional<PressureLimit> limit) {
    return limit.map(l -> l.gauge().value());
  }

  private static double psi(Optional<PressureLimit> limit) {
    return limit.map(l -> l.gauge().value().toPsi()).orElse(0.0);
  }

  private static Optional<Pressure> room(Window window) {
    return window
        .most()
        .flatMap(
            most ->
                window
                    .least()
                    .map(
                        least ->
                            Pressure.ofPsi(
                                most.gauge().value().toPsi()
                                    - least.gauge().value().toPsi()
                                    - window.buildUp().toPsi())));
  }
}
