package tankyard.engine.takeoff;

import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;

/** What joins a line to a vessel, tank, pump or injection well. */
final class NozzleRule implements TakeoffRule {
  @Override
  public String words() {
    return "At every nozzle a union, a nipple, an elbow and the change to the line's pipe, and a"
        + " block valve; no valve on an overflow";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Line line : drawing.lines()) {
      drawing
          .ends(line)
          .filter(NozzleRule::hasNozzles)
          .forEach(thing -> join(drawing, tally, line, thing));
    }
  }

  private static boolean hasNozzles(Thing thing) {
    return thing instanceof Vessel
        || thing instanceof Tank
        || thing instanceof InjectionPump
        || thing instanceof InjectionWell;
  }

  private static void join(Drawing drawing, Tally tally, Line line, Thing thing) {
    Status status = Drawing.joint(line, thing);
    boolean overflow = line.service() == Service.OVERFLOW;
    TakeoffKind kind = overflow ? TakeoffKind.OVERFLOW_FITTINGS : TakeoffKind.FITTINGS;
    String[] causes = {thing.id(), line.id()};
    Stock stock = drawing.stock();
    Joining.union(drawing, tally, kind, line, status, causes);
    tally.add(
        kind,
        stock.fitting(Fitting.Part.NIPPLE, Material.STEEL, drawing.size(line)),
        1,
        status,
        causes);
    tally.add(
        kind,
        stock.fitting(Fitting.Part.ELBOW_90, Material.STEEL, drawing.size(line)),
        1,
        status,
        causes);
    if (drawing.material(line) != Material.STEEL) {
      Joining.toThread(drawing, tally, kind, line, status, causes);
    }
    if (!overflow) {
      Ware valve =
          line.service() == Service.INJECTION
              ? stock.injectionValve(ValveType.Duty.BALL, drawing.size(line))
              : stock.valve(ValveType.Duty.BALL, drawing.size(line));
      tally.add(TakeoffKind.VALVES, valve, 1, status, causes);
    }
  }
}
