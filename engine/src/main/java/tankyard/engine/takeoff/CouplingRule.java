package tankyard.engine.takeoff;

import java.util.Optional;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;

/** Couplings between rolls and joints. */
final class CouplingRule implements TakeoffRule {
  @Override
  public String words() {
    return "A coupling between two rolls or joints of a new line; steel joints bring theirs along";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Line line : drawing.lines()) {
      Optional<Pipe> pipe = drawing.pipe(line);
      if (line.status() != Status.NEW
          || pipe.isEmpty()
          || pipe.get().material() == Material.STEEL
          || pipe.get().sold().form() == Pipe.Sold.Form.CUT) {
        continue;
      }
      double pieces = Math.ceil(drawing.feet(line) / pipe.get().sold().piece().toFeet());
      Ware coupling =
          drawing.stock().fitting(Fitting.Part.COUPLING, pipe.get().material(), drawing.size(line));
      TakeoffKind kind =
          line.service() == Service.OVERFLOW ? TakeoffKind.OVERFLOW_FITTINGS : TakeoffKind.FITTINGS;
      tally.add(kind, coupling, pieces - 1, Status.NEW, line.id());
    }
  }
}
