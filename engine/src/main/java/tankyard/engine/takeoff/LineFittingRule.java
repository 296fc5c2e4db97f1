package tankyard.engine.takeoff;

import java.util.Optional;
import tankyard.engine.catalog.CatalogItem;
import tankyard.engine.catalog.Fitting;
import tankyard.engine.catalog.ValveType;
import tankyard.engine.lease.FittingCount;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Service;

/** Fittings counted on a line by whoever drew it. */
final class LineFittingRule implements TakeoffRule {
  @Override
  public String words() {
    return "Every fitting and valve counted on a line, in the line's size and material";
  }

  @Override
  public void count(Drawing drawing, Tally tally) {
    for (Line line : drawing.lines()) {
      for (FittingCount count : line.fittings()) {
        Optional<CatalogItem> item = drawing.catalog().item(count.fitting());
        if (item.isPresent() && isOnlyALoss(item.get())) {
          continue;
        }
        tally.add(
            kind(line, item),
            ware(drawing, line, count, item),
            count.count(),
            line.status(),
            line.id());
      }
    }
  }

  private static boolean isOnlyALoss(CatalogItem item) {
    return item instanceof Fitting f
        && (f.part() == Fitting.Part.ENTRANCE || f.part() == Fitting.Part.EXIT);
  }

  private static TakeoffKind kind(Line line, Optional<CatalogItem> item) {
    if (item.filter(ValveType.class::isInstance).isPresent()) {
      return TakeoffKind.VALVES;
    }
    return line.service() == Service.OVERFLOW
        ? TakeoffKind.OVERFLOW_FITTINGS
        : TakeoffKind.FITTINGS;
  }

  private static Ware ware(
      Drawing drawing, Line line, FittingCount count, Optional<CatalogItem> item) {
    if (item.isEmpty()) {
      return Ware.unlisted(
          "Fitting \"" + count.fitting() + "\", not in the catalogue", Quote.Basis.EACH);
    }
    if (item.get() instanceof Fitting f && f.nominal().isEmpty()) {
      Fitting.Part part = f.part() == Fitting.Part.TEE_BRANCH ? Fitting.Part.TEE : f.part();
      return drawing.stock().fitting(part, drawing.material(line), drawing.size(line));
    }
    if (item.get() instanceof ValveType v && v.nominal().isEmpty()) {
      return line.service() == Service.INJECTION
          ? drawing.stock().injectionValve(v.duty(), drawing.size(line))
          : drawing.stock().valve(v.duty(), drawing.size(line));
    }
    return Ware.each(item.get());
  }
}
