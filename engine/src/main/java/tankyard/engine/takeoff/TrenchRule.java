package tankyard.engine.takeoff;

import tankyard.engine.lease.Line;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;

/** Trench, by line. */
final class TrenchRule implements TakeoffRule {
  @Override
  public String words() {
    return "A trench the length of every new flow and injection line, and of a leg, overflow or"
        + " suction of more than 100 ft; shorter ones lie on the pad";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Ware trench =
        drawing.stock().work("trench-foot", "Trench, lay and backfill, one foot", Quote.Basis.FOOT);
    for (Line line : drawing.lines()) {
      if (line.status() == Status.NEW && drawing.isBuried(line)) {
        tally.add(TakeoffKind.TRENCH, trench, drawing.feet(line), Status.NEW, line.id());
      }
    }
  }
}
