package tankyard.engine.catalog;

import java.util.List;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Temperature;
import tankyard.engine.working.Caution;

/** What must be said with a rating. */
final class RatingCautions {
  private RatingCautions() {}

  static List<Caution> tooHot(String material, Temperature pipe, double hottestFahrenheit) {
    return List.of(
        new Caution(
            "pipe-too-hot",
            material
                + " has no rating above "
                + Figures.significant(hottestFahrenheit, 4)
                + " °F and the pipe is at "
                + Figures.significant(pipe.toFahrenheit(), 4)
                + " °F; use a pipe that stands it."));
  }

  static Caution waterOnly() {
    return new Caution(
        "pipe-water-only",
        "PVC is taken for water only: it has no rating with oil inside; use polyethylene, steel or"
            + " fibreglass.");
  }

  static Caution typedAtAnotherTemperature(Temperature pipe) {
    return new Caution(
        "pipe-rating-typed-at-73",
        "The rating typed for this pipe holds at 73 °F and the pipe is at "
            + Figures.significant(pipe.toFahrenheit(), 4)
            + " °F; its maker says how much is left.");
  }
}
