package tankyard.engine.leasefile;

import tankyard.engine.units.Amount;
import tankyard.engine.units.AmountText;
import tankyard.engine.units.Unit;

/** How little and how much a quantity may be before it is surely a slip. */
record Limit(double least, double most, Unit unit) {
  private static final double ROUNDING = 1e-9;

  boolean allows(Amount amount) {
    double value = amount.in(unit);
    double slack = ROUNDING * Math.max(Math.abs(least), Math.abs(most));
    return value >= least - slack && value <= most + slack;
  }

  String words() {
    return AmountText.print(new Amount(least, unit))
        + " to "
        + AmountText.print(new Amount(most, unit));
  }
}
