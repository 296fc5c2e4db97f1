package tankyard.engine.takeoff;

import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;

/** The work of taking out what goes away. */
final class TakeOutRule implements TakeoffRule {
  @Override
  public String words() {
    return "Taking out every thing marked for removal; a buried line is flushed, capped and left."
        + " Plugging a well is not in it";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Stock stock = drawing.stock();
    drawing
        .lease()
        .things()
        .filter(thing -> thing.status() == Status.REMOVE)
        .forEach(thing -> takeOut(stock, tally, thing));
    Ware capped = stock.work("abandon-line", "Flushing and capping a line", Quote.Basis.EACH);
    for (Line line : drawing.lease().lines()) {
      if (line.status() == Status.REMOVE) {
        tally.add(TakeoffKind.CREW, capped, 1, Status.REMOVE, line.id());
      }
    }
  }

  private static void takeOut(Stock stock, Tally tally, Thing thing) {
    if (thing instanceof Tank) {
      add(tally, stock.work("take-out-tank", "Taking out a tank", Quote.Basis.EACH), thing);
    } else if (thing instanceof Vessel) {
      add(tally, stock.work("take-out-vessel", "Taking out a vessel", Quote.Basis.EACH), thing);
    } else if (thing instanceof InjectionPump) {
      add(tally, stock.work("take-out-pump", "Taking out a pump", Quote.Basis.EACH), thing);
    } else if (thing instanceof Tee) {
      add(tally, stock.work("take-out-fittings", "Taking out a tee", Quote.Basis.EACH), thing);
    }
  }

  private static void add(Tally tally, Ware work, Thing thing) {
    tally.add(TakeoffKind.CREW, work, 1, Status.REMOVE, thing.id());
  }
}
