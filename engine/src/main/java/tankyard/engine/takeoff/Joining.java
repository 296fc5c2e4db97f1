package tankyard.engine.takeoff;

import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.Material;
import tankyard.engine.catalog.NominalSize;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Status;

/** Parts that make the end of a line fit a steel thread. */
final class Joining {
  private Joining() {}

  /** A plastic pipe needs a transition, a steel one a nipple. */
  static void toThread(
      Drawing drawing, Tally tally, TakeoffKind kind, Line line, Status status, String... causes) {
    Material material = drawing.material(line);
    NominalSize size = drawing.size(line);
    Ware ware =
        material == Material.STEEL
            ? drawing.stock().fitting(Fitting.Part.NIPPLE, Material.STEEL, size)
            : drawing.stock().fitting(Fitting.Part.TRANSITION, material, size);
    tally.add(kind, ware, 1, status, causes);
  }

  static void union(
      Drawing drawing, Tally tally, TakeoffKind kind, Line line, Status status, String... causes) {
    Ware union = drawing.stock().fitting(Fitting.Part.UNION, Material.STEEL, drawing.size(line));
    tally.add(kind, union, 1, status, causes);
  }
}
