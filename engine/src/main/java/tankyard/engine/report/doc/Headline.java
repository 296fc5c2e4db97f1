package tankyard.engine.report.doc;

import tankyard.engine.units.Rounding;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Working;

/**
 * A number of the report that has its working in the appendix.
 *
 * @param what it is, with the thing and the case
 * @param digits as printed
 * @param unit of the printed digits
 * @param decimals it is printed to
 * @param number of its working
 */
public record Headline(
    String what,
    String digits,
    Unit unit,
    int decimals,
    Rounding rounding,
    int number,
    Working working) {}
