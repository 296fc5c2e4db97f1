package tankyard.app.figures;

import java.util.List;

/** Columns and the sets of rows below them, ready to be drawn. */
public record CaseTable(List<FigureColumn> columns, List<FigureSet> sets) {
  public CaseTable {
    columns = List.copyOf(columns);
    sets = List.copyOf(sets);
  }

  public static CaseTable empty() {
    return new CaseTable(List.of(), List.of());
  }
}
