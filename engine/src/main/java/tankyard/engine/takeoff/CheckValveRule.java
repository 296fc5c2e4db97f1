package tankyard.engine.takeoff;

import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;

/** Check valves where a break would let things run back. */
final class CheckValveRule implements TakeoffRule {
  @Override
  public String words() {
    return "A check valve where a flow line enters the separator or gun barrel, on both ends of an injection"
        + " line, and where a water leg enters a tank at the bottom; less those counted on the line";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Line line : drawing.lines()) {
      drawing
          .ends(line)
          .filter(thing -> runsBack(line, thing))
          .skip(countedByHand(drawing, line))
          .forEach(
              thing ->
                  tally.add(
                      TakeoffKind.VALVES,
                      check(drawing, line),
                      1,
                      Drawing.joint(line, thing),
                      thing.id(),
                      line.id()));
    }
  }

  private static long countedByHand(Drawing drawing, Line line) {
    return line.fittings().stream()
        .filter(
            f ->
                drawing
                    .catalog()
                    .item(f.fitting(), ValveType.class)
                    .filter(v -> v.duty() == ValveType.Duty.CHECK)
                    .isPresent())
        .mapToLong(FittingCount::count)
        .sum();
  }

  private static boolean runsBack(Line line, Thing thing) {
    return switch (line.service()) {
      case FLOW_LINE -> thing instanceof Vessel;
      case INJECTION -> thing instanceof InjectionWell || thing instanceof InjectionPump;
      case WATER_LEG -> thing instanceof Tank tank && tank.entry() == Tank.Entry.BOTTOM;
      default -> false;
    };
  }

  private static Ware check(Drawing drawing, Line line) {
    return line.service() == Service.INJECTION
        ? drawing.stock().injectionValve(ValveType.Duty.CHECK, drawing.size(line))
        : drawing.stock().valve(ValveType.Duty.CHECK, drawing.size(line));
  }
}
