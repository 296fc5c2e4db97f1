package tankyard.engine.quick;

import tankyard.engine.units.Figures;
import tankyard.engine.units.Quantity;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;

/**
 * One number of a quick sum.
 *
 * @param id short and stable: {@code friction}
 * @param title what it is, in words
 * @param unit it is printed in
 */
public record QuickAnswer(String id, String title, Computed<? extends Quantity> value, Unit unit) {
  private static final int FIGURES = 4;

  public QuickAnswer {
    // Fails here and not at the reader's if the unit is of another dimension.
    value.value().in(unit);
  }

  public double number() {
    return value.value().in(unit);
  }

  /** For example {@code 0.06118 psi}. */
  public String print() {
    String digits = Figures.significant(number(), FIGURES);
    return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
  }
}
