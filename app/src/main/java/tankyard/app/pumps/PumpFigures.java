package tankyard.app.pumps;

import java.util.List;
import java.util.stream.Stream;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.FigureRow;
import tankyard.app.figures.FigureSet;
import tankyard.app.figures.ResultRows;

/** The sets of rows about injection pumps. */
final class PumpFigures {
  private PumpFigures() {}

  static List<FigureSet> of(CaseFigures figures) {
    ResultRows rows = new ResultRows(figures);
    return figures.answer().lease().injectionPumps().stream()
        .map(pump -> new FigureSet(pump.name(), pump.id(), rows(rows, pump.id())))
        .filter(set -> !set.rows().isEmpty())
        .toList();
  }

  private static List<FigureRow> rows(ResultRows rows, String pumpId) {
    return Stream.concat(rows.pump(pumpId).stream(), rows.suction(pumpId).stream()).toList();
  }
}
