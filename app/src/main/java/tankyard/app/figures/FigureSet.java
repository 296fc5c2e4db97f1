package tankyard.app.figures;

import java.util.List;

/**
 * Rows under one heading.
 *
 * @param title for example a tank's name
 * @param thingId what the rows are about, to be found on the map; empty where it is the whole lease
 */
public record FigureSet(String title, String thingId, List<FigureRow> rows) {
  public FigureSet {
    rows = List.copyOf(rows);
  }
}
