package tankyard.engine.fluids;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import tankyard.engine.units.Gravity;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/**
 * Stock-tank oil: its gravity at 60 degF and whatever viscosities were measured. Two measurements
 * are worth more than any correlation; none is allowed.
 */
public record OilSpec(Gravity gravity, List<ViscosityPoint> measured) {
  public OilSpec {
    Objects.requireNonNull(gravity, "gravity");
    measured =
        measured.stream()
            .sorted(Comparator.comparingDouble((ViscosityPoint p) -> p.temperature().kelvins()))
            .toList();
    for (int i = 1; i < measured.size(); i++) {
      requireThinner(measured.get(i - 1), measured.get(i));
    }
  }

  public static OilSpec ofGravity(Gravity gravity) {
    return new OilSpec(gravity, List.of());
  }

  /** An oil's gravity as the trade says it. */
  double api() {
    return gravity.in(Unit.DEGREE_API);
  }

  private static void requireThinner(ViscosityPoint cool, ViscosityPoint warm) {
    boolean warmer = warm.temperature().kelvins() > cool.temperature().kelvins();
    boolean thinner = warm.viscosity().pascalSeconds() < cool.viscosity().pascalSeconds();
    if (!warmer || !thinner) {
      throw new IllegalArgumentException(
          "Oil thins as it warms, but "
              + words(cool)
              + " and "
              + words(warm)
              + " were typed. Correct one of the two measurements.");
    }
  }

  private static String words(ViscosityPoint point) {
    return UnitSystem.FIELD.print(point.viscosity(), 4)
        + " at "
        + UnitSystem.FIELD.print(point.temperature(), 4);
  }
}
