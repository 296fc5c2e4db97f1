package tankyard.engine.takeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Tee;

/** Tees with a valve on every side. */
final class TeeRule implements TakeoffRule {
  @Override
  public String words() {
    return "At every tee: tees in the largest size, one for each line past the second; on every"
        + " side a valve and the ends that join it, and a swage where the side is smaller";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Tee tee : drawing.staying(drawing.lease().tees())) {
      List<Line> sides = drawing.linesAt(tee).toList();
      Optional<Line> largest =
          sides.stream().max(Comparator.comparing((Line line) -> drawing.size(line)));
      if (largest.isEmpty()) {
        continue;
      }
      NominalSize size = drawing.size(largest.get());
      Ware fitting =
          drawing.stock().fitting(Fitting.Part.TEE, drawing.material(largest.get()), size);
      tally.add(
          TakeoffKind.FITTINGS, fitting, Math.max(1, sides.size() - 2), tee.status(), tee.id());
      sides.forEach(side -> side(drawing, tally, tee, side, size));
    }
  }

  private static void side(Drawing drawing, Tally tally, Tee tee, Line side, NominalSize largest) {
    Status status = Drawing.joint(side, tee);
    String[] causes = {tee.id(), side.id()};
    NominalSize size = drawing.size(side);
    tally.add(
        TakeoffKind.VALVES, drawing.stock().valve(ValveType.Duty.BALL, size), 1, status, causes);
    Joining.toThread(drawing, tally, TakeoffKind.FITTINGS, side, status, causes);
    Joining.toThread(drawing, tally, TakeoffKind.FITTINGS, side, status, causes);
    if (size.compareTo(largest) < 0) {
      Ware swage = drawing.stock().fitting(Fitting.Part.SWAGE, Material.STEEL, largest);
      tally.add(TakeoffKind.FITTINGS, swage, 1, status, causes);
    }
  }
}
