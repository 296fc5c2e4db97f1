package tankyard.engine.takeoff;

import tankyard.engine.lease.InjectionWell;

/** What an injection well needs beside the end of its line. */
final class InjectionWellRule implements TakeoffRule {
  @Override
  public String words() {
    return "At every injection well a gauge; valve, check valve and union come with the line's end";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Ware gauge = drawing.stock().sundry("gauge-0-1000", "Pressure gauge 0 to 1000 psi");
    for (InjectionWell well : drawing.staying(drawing.lease().injectionWells())) {
      tally.add(TakeoffKind.GAUGE, gauge, 1, well.status(), well.id());
    }
  }
}
