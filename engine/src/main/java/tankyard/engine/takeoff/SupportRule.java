package tankyard.engine.takeoff;

import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;

/** Supports under pipe above the ground. */
final class SupportRule implements TakeoffRule {
  private static final double FEET_BETWEEN = 10;

  @Override
  public String words() {
    return "A support every 10 ft under lines that lie on the pad, two at least";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    Ware support = drawing.stock().sundry("pipe-support", "Pipe support, adjustable");
    for (Line line : drawing.lines()) {
      if (!drawing.isBuried(line)) {
        double supports = Math.max(2, Math.ceil(drawing.feet(line) / FEET_BETWEEN));
        TakeoffKind kind =
            line.service() == Service.OVERFLOW
                ? TakeoffKind.OVERFLOW_FITTINGS
                : TakeoffKind.FITTINGS;
        tally.add(kind, support, supports, line.status(), line.id());
      }
    }
  }
}
