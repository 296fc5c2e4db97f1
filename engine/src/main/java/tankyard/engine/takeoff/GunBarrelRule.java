package tankyard.engine.takeoff;

import java.util.Comparator;
import java.util.Optional;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.GunBarrelSize;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.GunBarrel;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Figures;

/** A gun barrel with its leg and downcomer. */
final class GunBarrelRule implements TakeoffRule {
  private static final NominalSize DRAIN = NominalSize.ofInches(2);
  private static final int LEG_ELBOWS = 2;

  @Override
  public String words() {
    return "For every gun barrel: the vessel and its setting, thief hatch, vent valve, share of the"
        + " walkway, sight glass, drain valve; leg and downcomer each as long as the shell is high,"
        + " two elbows, two unions, a tee and a nipple at the weir, a block valve at the bottom";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (GunBarrel barrel : drawing.staying(drawing.lease().gunBarrels())) {
      vessel(drawing, tally, barrel);
      pipe(drawing, tally, barrel, barrel.legPipe());
      pipe(drawing, tally, barrel, barrel.downcomerPipe().orElse(barrel.legPipe()));
      fittings(drawing, tally, barrel);
    }
  }

  private static void vessel(Drawing drawing, Tally tally, GunBarrel barrel) {
    Stock stock = drawing.stock();
    Status status = barrel.status();
    String id = barrel.id();
    tally.add(TakeoffKind.GUN_BARREL, shell(drawing, barrel), 1, status, id);
    Ware hatch = stock.sundry("thief-hatch", "Thief hatch");
    tally.addWith(TakeoffKind.GUN_BARREL, hatch, 1, status, id);
    Ware vent = stock.sundry("vent-valve", "Vent valve");
    tally.addWith(TakeoffKind.GUN_BARREL, vent, 1, status, id);
    Ware walkway = stock.sundry("walkway-share", "Walkway and stair, one tank's share");
    tally.add(TakeoffKind.OTHER, walkway, 1, status, id);
    tally.add(TakeoffKind.OTHER, stock.sundry("sight-glass", "Sight glass"), 1, status, id);
    tally.add(TakeoffKind.VALVES, stock.valve(ValveType.Duty.BALL, DRAIN), 1, status, id);
    if (status == Status.NEW) {
      Ware setting = stock.work("tank-set", "Setting a tank", Quote.Basis.EACH);
      tally.add(TakeoffKind.CREW, setting, 1, status, id);
    }
  }

  private static void pipe(Drawing drawing, Tally tally, GunBarrel barrel, String pipeId) {
    Ware pipe =
        drawing
            .catalog()
            .pipe(pipeId)
            .map(p -> Ware.of(p, Quote.Basis.FOOT))
            .orElseGet(
                () ->
                    Ware.unlisted(
                        "Pipe \"" + pipeId + "\", not in the catalogue", Quote.Basis.FOOT));
    double feet = barrel.shellHeight().toFeet();
    tally.add(TakeoffKind.LEG_PIPE, pipe, feet, barrel.status(), barrel.id());
  }

  private static void fittings(Drawing drawing, Tally tally, GunBarrel barrel) {
    Optional<Pipe> leg = drawing.catalog().pipe(barrel.legPipe());
    Optional<Pipe> down = barrel.downcomerPipe().flatMap(drawing.catalog()::pipe).or(() -> leg);
    fitting(drawing, tally, barrel, Fitting.Part.ELBOW_90, leg, LEG_ELBOWS);
    fitting(drawing, tally, barrel, Fitting.Part.UNION, leg, 1);
    fitting(drawing, tally, barrel, Fitting.Part.NIPPLE, leg, 1);
    fitting(drawing, tally, barrel, Fitting.Part.TEE, down, 1);
    fitting(drawing, tally, barrel, Fitting.Part.UNION, down, 1);
    Ware block = drawing.stock().valve(ValveType.Duty.BALL, size(leg));
    tally.add(TakeoffKind.VALVES, block, 1, barrel.status(), barrel.id());
  }

  private static void fitting(
      Drawing drawing,
      Tally tally,
      GunBarrel barrel,
      Fitting.Part part,
      Optional<Pipe> pipe,
      int count) {
    Material material = pipe.map(Pipe::material).orElse(Material.OTHER);
    Ware ware = drawing.stock().fitting(part, material, size(pipe));
    tally.add(TakeoffKind.FITTINGS, ware, count, barrel.status(), barrel.id());
  }

  private static NominalSize size(Optional<Pipe> pipe) {
    return pipe.map(Pipe::nominal).orElse(DRAIN);
  }

  /** The model it is drawn as, or one of the same size; steel before anything else. */
  private static Ware shell(Drawing drawing, GunBarrel barrel) {
    Optional<CatalogItem> named = barrel.model().flatMap(drawing.catalog()::item);
    if (named.isPresent()) {
      return Ware.each(named.get());
    }
    Optional<GunBarrelSize> same =
        drawing.catalog().list(GunBarrelSize.class).stream()
            .filter(size -> Same.length(size.diameter(), barrel.diameter()))
            .filter(size -> Same.length(size.shellHeight(), barrel.shellHeight()))
            .min(Comparator.comparing(size -> size.material() != Material.STEEL));
    return same.map(Ware::each)
        .orElseGet(
            () ->
                Ware.unlisted(
                    "Gun barrel, "
                        + Figures.significant(barrel.diameter().toFeet(), 4)
                        + " ft x "
                        + Figures.significant(barrel.shellHeight().toFeet(), 4)
                        + " ft",
                    Quote.Basis.EACH));
  }
}
