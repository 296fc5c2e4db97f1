package tankyard.engine.takeoff;

import tankyard.engine.lease.Line;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Service;

/** Pipe, by line. */
final class PipeRule implements TakeoffRule {
  @Override
  public String words() {
    return "Pipe along the trench, slack included; 5 % waste, in whole rolls or joints";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Line line : drawing.lines()) {
      Ware pipe =
          drawing
              .pipe(line)
              .map(p -> Ware.of(p, Quote.Basis.FOOT))
              .orElseGet(
                  () ->
                      Ware.unlisted(
                          "Pipe \"" + line.pipe() + "\", not in the catalogue", Quote.Basis.FOOT));
      tally.add(kind(line.service()), pipe, drawing.feet(line), line.status(), line.id());
    }
  }

  private static TakeoffKind kind(Service service) {
    return switch (service) {
      case FLOW_LINE -> TakeoffKind.FLOW_LINE_PIPE;
      case OIL_LEG, WATER_LEG -> TakeoffKind.LEG_PIPE;
      case OVERFLOW -> TakeoffKind.OVERFLOW_PIPE;
      case SUCTION -> TakeoffKind.SUCTION_PIPE;
      case INJECTION -> TakeoffKind.INJECTION_PIPE;
      case WATER_RETURN -> TakeoffKind.RETURN_PIPE;
    };
  }
}
