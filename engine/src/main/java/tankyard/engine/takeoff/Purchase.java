package tankyard.engine.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tankyard.engine.catalog.Catalog;
import tankyard.engine.catalog.Pipe;
import tankyard.engine.lease.Quote;
import tankyard.engine.lease.Status;
import tankyard.engine.units.Figures;

/** From what is drawn to what is bought: waste on pipe, whole rolls and joints, whole days. */
final class Purchase {
  /** Waste on pipe where no quote says otherwise: common practice is 3 to 10 %. */
  static final double PIPE_WASTE = 0.05;

  private static final double ROUNDING = 1e-9;

  private Purchase() {}

  /** Days and cubic yards are bought whole; the rest as drawn. */
  static double wholeOnes(double drawn, Quote.Basis measure) {
    return switch (measure) {
      case DAY, CUBIC_YARD -> Math.ceil(drawn - ROUNDING);
      default -> drawn;
    };
  }

  /**
   * Pipe of one sort comes out of the same rolls whatever line it is for: the whole pieces are
   * reckoned together, and what is left of the last one is put on the longest line.
   */
  static List<TakeoffLine> inWholePieces(List<TakeoffLine> lines, Catalog catalog) {
    List<TakeoffLine> bought = new ArrayList<>(lines);
    lines.stream()
        .filter(line -> pipe(line, catalog).isPresent())
        .collect(Collectors.groupingBy(line -> line.item().orElseThrow()))
        .values()
        .forEach(
            group ->
                buy(group, pipe(group.get(0), catalog).orElseThrow())
                    .forEach(line -> replace(bought, line)));
    return bought;
  }

  private static Optional<Pipe> pipe(TakeoffLine line, Catalog catalog) {
    return line.status() == Status.NEW ? line.item().flatMap(catalog::pipe) : Optional.empty();
  }

  private static List<TakeoffLine> buy(List<TakeoffLine> group, Pipe pipe) {
    double piece = pipe.sold().piece().toFeet();
    double needed = group.stream().mapToDouble(l -> l.drawn() * (1 + PIPE_WASTE)).sum();
    double pieces = Math.ceil(needed / piece - ROUNDING);
    String as = pieces(pieces, pipe.sold(), group.size() > 1);
    TakeoffLine longest =
        group.stream().max(Comparator.comparingDouble(TakeoffLine::drawn)).orElseThrow();
    double left = pieces * piece - needed;
    return group.stream()
        .map(l -> l.buying(l.drawn() * (1 + PIPE_WASTE) + (l == longest ? left : 0), as))
        .toList();
  }

  private static String pieces(double count, Pipe.Sold sold, boolean shared) {
    if (sold.form() == Pipe.Sold.Form.CUT) {
      return "";
    }
    return Figures.exact(count)
        + " "
        + sold.form().words()
        + (count == 1 ? "" : "s")
        + " of "
        + Figures.exact(sold.piece().toFeet())
        + " ft"
        + (shared ? ", shared with its other lines" : "");
  }

  private static void replace(List<TakeoffLine> lines, TakeoffLine line) {
    for (int i = 0; i < lines.size(); i++) {
      TakeoffLine other = lines.get(i);
      if (other.kind() == line.kind()
          && other.item().equals(line.item())
          && other.status() == line.status()
          && other.comesWith() == line.comesWith()) {
        lines.set(i, line);
      }
    }
  }
}
