package tankyard.app.pumps;

import java.util.List;
import tankyard.app.figures.CaseFigures;
import tankyard.app.figures.FigureSet;
import tankyard.app.figures.ResultRows;

/** The sets of rows about injection pumps. */
final class PumpFigures {
  private PumpFigures() {}

  static List<FigureSet> of(CaseFigures figures) {
    ResultRows rows = new ResultRows(figures);
    return figures.answer().lease().injectionPumps().stream()
        .map(pump -> new FigureSet(pump.name(), pump.id(), rows.pump(pump.id())))
        .filter(set -> !set.rows().isEmpty())
        .toList();
  }
}
