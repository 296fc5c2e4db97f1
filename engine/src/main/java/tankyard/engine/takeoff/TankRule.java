package tankyard.engine.takeoff;

import java.util.Comparator;
import java.util.Optional;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.TankSize;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.units.Figures;

/** Tanks with their hatches, vents and valves. */
final class TankRule implements TakeoffRule {
  private static final NominalSize SALES = NominalSize.ofInches(4);
  private static final NominalSize DRAIN = NominalSize.ofInches(2);

  @Override
  public String words() {
    return "For every tank: its setting, thief hatch, vent valve, high-level switch, share of the"
        + " walkway, drain valve; a 4 in sales valve on an oil tank, a skim valve on a water tank";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Tank tank : drawing.staying(drawing.lease().tanks())) {
      Stock stock = drawing.stock();
      boolean oil = tank.duty() == Tank.Duty.OIL;
      TakeoffKind kind = oil ? TakeoffKind.OIL_TANK : TakeoffKind.WATER_TANK;
      Status status = tank.status();
      String id = tank.id();
      tally.add(kind, shell(drawing, tank), 1, status, id);
      tally.addWith(kind, stock.sundry("thief-hatch", "Thief hatch"), 1, status, id);
      tally.addWith(kind, stock.sundry("vent-valve", "Vent valve"), 1, status, id);
      tally.add(
          TakeoffKind.OTHER, stock.sundry("high-level-switch", "High-level switch"), 1, status, id);
      tally.add(
          TakeoffKind.OTHER,
          stock.sundry("walkway-share", "Walkway and stair, one tank's share"),
          1,
          status,
          id);
      Ware drain = stock.valve(ValveType.Duty.BALL, DRAIN);
      tally.add(TakeoffKind.VALVES, drain, oil ? 1 : 2, status, id);
      if (oil) {
        tally.add(TakeoffKind.VALVES, stock.valve(ValveType.Duty.BALL, SALES), 1, status, id);
      }
      if (status == Status.NEW) {
        Ware setting = stock.work("tank-set", "Setting a tank", Quote.Basis.EACH);
        tally.add(TakeoffKind.CREW, setting, 1, status, id);
      }
    }
  }

  /** The model it is drawn as, or the tank of the same size; steel before anything else. */
  private static Ware shell(Drawing drawing, Tank tank) {
    Optional<CatalogItem> named = tank.model().flatMap(drawing.catalog()::item);
    if (named.isPresent()) {
      return Ware.each(named.get());
    }
    Optional<TankSize> same =
        drawing.catalog().list(TankSize.class).stream()
            .filter(size -> Same.length(size.diameter(), tank.diameter()))
            .filter(size -> Same.length(size.shellHeight(), tank.shellHeight()))
            .min(Comparator.comparing(size -> size.material() != Material.STEEL));
    return same.map(Ware::each)
        .orElseGet(
            () ->
                Ware.unlisted(
                    "Tank, "
                        + Figures.significant(tank.diameter().toFeet(), 4)
                        + " ft x "
                        + Figures.significant(tank.shellHeight().toFeet(), 4)
                        + " ft",
                    Quote.Basis.EACH));
  }
}
