package tankyard.engine.fluids;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.units.Temperature;

/** Stock-tank oil at any temperature, by the best law its measurements allow. */
final class Oil {
  private final CrudeDensity density;
  private final List<WaltherLine> lines = new ArrayList<>();
  private final ViscosityLaw otherwise;

  Oil(OilSpec spec) {
    density = new CrudeDensity(spec.gravity());
    List<ViscosityPoint> points = spec.measured();
    for (int i = 1; i < points.size(); i++) {
      lines.add(new WaltherLine(density, points.get(i - 1), points.get(i)));
    }
    otherwise =
        points.size() == 1 ? new OnePointViscosity(points.get(0)) : new NgEgbogah(spec.api());
  }

  LiquidState at(Temperature temperature) {
    return LiquidState.of(
        "oil", temperature, density.at(temperature), law(temperature).at(temperature));
  }

  private ViscosityLaw law(Temperature temperature) {
    if (lines.isEmpty()) {
      return otherwise;
    }
    return lines.stream()
        .filter(line -> temperature.kelvins() <= line.upTo())
        .findFirst()
        .orElse(lines.get(lines.size() - 1));
  }
}
