package tankyard.engine.takeoff;

import java.util.Locale;
import java.util.Optional;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.FloatType;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.RegulatorType;
import tankyard.engine.catalog.SeparatorSize;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.DumpValve;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Separator;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Pressure;

/** A separator with its valves, float, glass and gauge. */
final class SeparatorRule implements TakeoffRule {
  private static final NominalSize USUAL = NominalSize.ofInches(2);
  private static final double SMALL_GAUGE_PSI = 30;

  @Override
  public String words() {
    return "For every separator: the vessel and its setting, dump valve with float, regulator,"
        + " relief valve with no valve under it, gauge, sight glass, drain valve with plug; where the"
        + " dump valve has them a strainer, and a bypass of two tees, two elbows, four nipples, a"
        + " globe valve and a second block valve";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Separator s : drawing.staying(drawing.lease().separators())) {
      Stock stock = drawing.stock();
      Status status = s.status();
      tally.add(TakeoffKind.SEPARATOR, vessel(drawing, s), 1, status, s.id());
      tally.add(TakeoffKind.DUMP_VALVE, dumpValve(drawing, s), 1, status, s.id());
      tally.addWith(TakeoffKind.DUMP_VALVE, floatBall(drawing, s.dumpValve()), 1, status, s.id());
      around(drawing, tally, s);
      tally.add(TakeoffKind.REGULATOR, regulator(drawing, s), 1, status, s.id());
      tally.add(
          TakeoffKind.RELIEF_VALVE,
          stock.valve(ValveType.Duty.RELIEF, legSize(drawing, s, Service.OIL_LEG)),
          1,
          status,
          s.id());
      tally.add(TakeoffKind.GAUGE, gauge(stock, s), 1, status, s.id());
      tally.add(TakeoffKind.OTHER, stock.sundry("sight-glass", "Sight glass"), 1, status, s.id());
      tally.add(TakeoffKind.VALVES, stock.valve(ValveType.Duty.BALL, USUAL), 1, status, s.id());
      if (status == Status.NEW) {
        Ware setting = stock.work("vessel-set", "Setting a separator", Quote.Basis.EACH);
        tally.add(TakeoffKind.CREW, setting, 1, status, s.id());
      }
    }
  }

  private static void around(Drawing drawing, Tally tally, Separator s) {
    NominalSize size = legSize(drawing, s, Service.WATER_LEG);
    if (s.dumpValve().hasStrainer()) {
      steel(drawing, tally, s, Fitting.Part.STRAINER, size, 1);
    }
    if (s.dumpValve().hasBypass()) {
      steel(drawing, tally, s, Fitting.Part.TEE, size, 2);
      steel(drawing, tally, s, Fitting.Part.ELBOW_90, size, 2);
      steel(drawing, tally, s, Fitting.Part.NIPPLE, size, 4);
      Ware globe = drawing.stock().valve(ValveType.Duty.GLOBE, size);
      tally.add(TakeoffKind.VALVES, globe, 1, s.status(), s.id());
      Ware block = drawing.stock().valve(ValveType.Duty.BALL, size);
      tally.add(TakeoffKind.VALVES, block, 1, s.status(), s.id());
    }
  }

  private static void steel(
      Drawing drawing, Tally tally, Separator s, Fitting.Part part, NominalSize size, int count) {
    Ware ware = drawing.stock().fitting(part, Material.STEEL, size);
    tally.add(TakeoffKind.FITTINGS, ware, count, s.status(), s.id());
  }

  private static Ware vessel(Drawing drawing, Separator s) {
    Optional<CatalogItem> named = s.model().flatMap(drawing.catalog()::item);
    if (named.isPresent()) {
      return Ware.each(named.get());
    }
    Optional<SeparatorSize> same =
        drawing.catalog().list(SeparatorSize.class).stream()
            .filter(size -> size.shape() == s.shape())
            .filter(size -> Same.length(size.diameter(), s.diameter()))
            .filter(size -> Same.length(size.length(), s.length()))
            .findFirst();
    return same.map(Ware::each)
        .orElseGet(
            () ->
                Ware.unlisted(
                    "Separator, "
                        + s.shape().name().toLowerCase(Locale.ROOT)
                        + ", "
                        + Figures.significant(s.diameter().toInches(), 4)
                        + " in x "
                        + Figures.significant(s.length().toFeet(), 4)
                        + " ft",
                    Quote.Basis.EACH));
  }

  private static Ware dumpValve(Drawing drawing, Separator s) {
    DumpValve valve = s.dumpValve();
    return valve
        .model()
        .flatMap(id -> drawing.catalog().item(id, ValveType.class))
        .map(Ware::each)
        .orElseGet(
            () ->
                Ware.unlisted(
                    "Lever dump valve, Cv "
                        + Figures.significant(valve.cv().toGpmPerRootPsi(), 4)
                        + valve
                            .port()
                            .map(p -> ", " + Figures.significant(p.toInches(), 3) + " in port")
                            .orElse(""),
                    Quote.Basis.EACH));
  }

  private static Ware floatBall(Drawing drawing, DumpValve valve) {
    return valve
        .floatBall()
        .flatMap(
            ball ->
                drawing.catalog().list(FloatType.class).stream()
                    .filter(f -> Same.length(f.diameter(), ball.diameter()))
                    .filter(f -> Math.abs(f.lever().ratio() - ball.lever().ratio()) < 0.5)
                    .findFirst())
        .map(Ware::each)
        .orElseGet(() -> Ware.unlisted("Float ball with lever", Quote.Basis.EACH));
  }

  private static Ware regulator(Drawing drawing, Separator s) {
    return s.regulator()
        .model()
        .flatMap(id -> drawing.catalog().item(id, RegulatorType.class))
        .map(Ware::each)
        .orElseGet(
            () ->
                Ware.unlisted(
                    legSize(drawing, s, Service.OIL_LEG).words() + " back-pressure regulator",
                    Quote.Basis.EACH));
  }

  private static Ware gauge(Stock stock, Separator s) {
    boolean small = s.gaugeRange().map(Pressure::toPsi).orElse(SMALL_GAUGE_PSI) <= SMALL_GAUGE_PSI;
    return small
        ? stock.sundry("gauge-0-30", "Pressure gauge 0 to 30 psi")
        : stock.sundry("gauge-0-60", "Pressure gauge 0 to 60 psi");
  }

  private static NominalSize legSize(Drawing drawing, Separator s, Service service) {
    return drawing
        .linesAt(s)
        .filter(line -> line.service() == service)
        .map(drawing::size)
        .findFirst()
        .orElse(USUAL);
  }
}
