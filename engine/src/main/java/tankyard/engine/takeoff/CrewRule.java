package tankyard.engine.takeoff;

import tankyard.engine.lease.InjectionPump;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tank;
import tankyard.engine.lease.Tee;
import tankyard.engine.lease.Thing;
import tankyard.engine.lease.Vessel;

/** Days of the crew that joins it all. */
final class CrewRule implements TakeoffRule {
  private static final double HOURS_A_DAY = 10;
  private static final double HOURS_A_LINE_END = 1.5;

  @Override
  public String words() {
    return "Crew hours: 1 1/2 for each end of a new line, 3 for a new tee, 4 for a tank, 8 for a"
        + " separator or gun barrel, 8 for a pump; 10 hours make a day, whole days. Trenching is not in it";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Ware day = drawing.stock().work("crew-day", "Crew with truck, one day", Quote.Basis.DAY);
    for (Line line : drawing.lines()) {
      if (line.status() == Status.NEW) {
        double hours = 2 * HOURS_A_LINE_END;
        tally.add(TakeoffKind.CREW, day, hours / HOURS_A_DAY, Status.NEW, line.id());
      }
    }
    drawing
        .lease()
        .things()
        .filter(thing -> thing.status() == Status.NEW)
        .forEach(
            thing ->
                tally.add(
                    TakeoffKind.CREW, day, hours(thing) / HOURS_A_DAY, Status.NEW, thing.id()));
  }

  private static double hours(Thing thing) {
    if (thing instanceof Tee) {
      return 3;
    }
    if (thing instanceof Tank) {
      return 4;
    }
    return thing instanceof Vessel || thing instanceof InjectionPump ? 8 : 0;
  }
}
