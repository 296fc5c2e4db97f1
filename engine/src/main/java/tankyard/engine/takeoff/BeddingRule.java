package tankyard.engine.takeoff;

import tankyard.engine.catalog.Material;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;

/** What goes into the trench beside the pipe. */
final class BeddingRule implements TakeoffRule {
  /** 12 in wide and 2 in deep, in yd3 for each foot of trench. */
  private static final double SAND_YARDS = 1.0 * (2.0 / 12) / 27;

  private static final double FEET_BETWEEN_MARKERS = 500;

  @Override
  public String words() {
    return "2 in of sand and a tracer wire under every buried line that is not steel, and a marker"
        + " at both ends and every 500 ft";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Stock stock = drawing.stock();
    Ware sand = stock.sundry("bedding-sand", "Sand bedding", Quote.Basis.CUBIC_YARD);
    Ware wire = stock.sundry("tracer-wire-foot", "Tracer wire, one foot", Quote.Basis.FOOT);
    Ware marker = stock.sundry("line-marker", "Line marker post");
    for (Line line : drawing.lines()) {
      if (line.status() != Status.NEW || !drawing.isBuried(line)) {
        continue;
      }
      double feet = drawing.feet(line);
      if (drawing.material(line) != Material.STEEL) {
        tally.addWith(TakeoffKind.TRENCH, sand, feet * SAND_YARDS, Status.NEW, line.id());
        tally.addWith(TakeoffKind.TRENCH, wire, feet, Status.NEW, line.id());
      }
      double markers = 2 + Math.floor(feet / FEET_BETWEEN_MARKERS);
      tally.addWith(TakeoffKind.TRENCH, marker, markers, Status.NEW, line.id());
    }
  }
}
