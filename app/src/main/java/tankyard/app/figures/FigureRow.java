package tankyard.app.figures;

import java.util.List;

/**
 * One result in every design case.
 *
 * @param label what it is
 * @param unit of all its figures; empty for words
 * @param why what it decides, for the tooltip
 * @param figures in the order of the columns
 */
public record FigureRow(String label, String unit, String why, List<Figure> figures) {
  public FigureRow {
    figures = List.copyOf(figures);
  }

  public String heading() {
    return unit.isEmpty() ? label : label + ", " + unit;
  }

  /** Whether it says the same words in every case: a name for which a column is too narrow. */
  boolean isSameWords() {
    return unit.isEmpty()
        && figures.size() > 1
        && figures.stream().allMatch(f -> f.working().isEmpty())
        && figures.stream().map(Figure::text).distinct().count() == 1
        && figures.get(0).text().chars().anyMatch(Character::isLetter);
  }
}
