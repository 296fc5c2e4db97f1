package tankyard.engine.report.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tankyard.engine.units.UnitSystem;
import tankyard.engine.window.PressureLimit;

/**
 * Of the limits from above those somebody must look at: the lowest few, and every other one below
 * twice the lowest that does not merely say again what the row above it says.
 */
final class NearLimits {
  private static final int ALWAYS = 5;
  private static final double FAR = 2;

  private NearLimits() {}

  /**
   * The ones to print.
   *
   * @param limits the lowest first
   */
  static List<PressureLimit> of(List<PressureLimit> limits, UnitSystem units) {
    List<PressureLimit> near = new ArrayList<>();
    for (PressureLimit limit : limits) {
      if (near.size() < ALWAYS
          || pascals(limit) < FAR * pascals(limits.get(0))
              && !isAlike(limit, near.get(near.size() - 1), units)) {
        near.add(limit);
      }
    }
    return near;
  }

  /**
   * For example "4 more, at 76.4 psi and above, are left out; the JSON and the studio have all."
   */
  static Optional<String> leftOut(
      List<PressureLimit> limits, List<PressureLimit> near, UnitSystem units) {
    List<PressureLimit> out = limits.stream().filter(limit -> !near.contains(limit)).toList();
    return out.stream()
        .findFirst()
        .map(
            lowest ->
                (out.size() == 1 ? "1 more, at " : out.size() + " more, from ")
                    + reading(lowest, units)
                    + " "
                    + Figure.READING.unit(units).symbol()
                    + (out.size() == 1 ? ", is" : " up, are")
                    + " left out here; the JSON and the studio have all.");
  }

  private static boolean isAlike(PressureLimit limit, PressureLimit above, UnitSystem units) {
    return limit.kind() == above.kind()
        && limit.caseId().equals(above.caseId())
        && reading(limit, units).equals(reading(above, units));
  }

  private static String reading(PressureLimit limit, UnitSystem units) {
    return Figure.READING.digits(limit.gauge().value().si(), units, limit.rounding());
  }

  private static double pascals(PressureLimit limit) {
    return limit.gauge().value().pascals();
  }
}
