package tankyard.engine.takeoff;

import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Well;

/** What joins a flow line to a well. */
final class WellRule implements TakeoffRule {
  @Override
  public String words() {
    return "At every well a check valve, a block valve, a union, a gauge and the change to the"
        + " line's pipe";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Stock stock = drawing.stock();
    Ware gauge = stock.sundry("gauge-0-60", "Pressure gauge 0 to 60 psi");
    for (Well well : drawing.staying(drawing.lease().wells())) {
      drawing
          .linesAt(well)
          .filter(line -> line.service() == Service.FLOW_LINE)
          .forEach(line -> join(drawing, tally, gauge, well, line));
    }
  }

  private static void join(Drawing drawing, Tally tally, Ware gauge, Well well, Line line) {
    Status status = line.status();
    NominalSize size = drawing.size(line);
    String[] causes = {well.id(), line.id()};
    Stock stock = drawing.stock();
    tally.add(TakeoffKind.VALVES, stock.valve(ValveType.Duty.CHECK, size), 1, status, causes);
    tally.add(TakeoffKind.VALVES, stock.valve(ValveType.Duty.BALL, size), 1, status, causes);
    Joining.union(drawing, tally, TakeoffKind.FITTINGS, line, status, causes);
    Joining.toThread(drawing, tally, TakeoffKind.FITTINGS, line, status, causes);
    tally.add(TakeoffKind.GAUGE, gauge, 1, status, causes);
  }
}
