package tankyard.app.pressure;

import java.util.function.Supplier;
import tankyard.engine.working.Working;

/**
 * One limit of one case, as a line of the table. Pressures in the unit shown.
 *
 * @param end "at least" or "at most"
 * @param gaugeDigits of the gauge
 */
record LimitRow(
    String separator,
    String end,
    String kind,
    String thingId,
    String name,
    String caseName,
    double gauge,
    String gaugeDigits,
    double lift,
    double friction,
    double valve,
    double margin,
    Supplier<Working> working) {}
