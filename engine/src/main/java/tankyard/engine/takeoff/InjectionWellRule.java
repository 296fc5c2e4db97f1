package tankyard.engine.takeoff;

import tankyard.engine.lease.InjectionWell;
import tankyard.engine.lease.Status;

/** What an injection well needs beside the end of its line. */
final class InjectionWellRule implements TakeoffRule {
  @Override
  public String words() {
    return "At every injection well a gauge, and a meter where another lease pumps into it too;"
        + " valve, check valve and union come with the line's end";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Ware meter = drawing.stock().sundry("water-meter", "Water meter on the injection line");
    Ware gauge = drawing.stock().sundry("gauge-0-1000", "Pressure gauge 0 to 1000 psi");
    for (InjectionWell well : drawing.staying(drawing.lease().injectionWells())) {
      tally.add(TakeoffKind.GAUGE, gauge, 1, well.status(), well.id());
      if (well.otherRate().isPresent()) {
        tally.add(TakeoffKind.OTHER, meter, 1, Status.NEW, well.id());
      }
    }
  }
}
