package tankyard.engine.checks.vessels;

import java.util.List;
import tankyard.engine.checks.Versus;
import tankyard.engine.units.Unit;
import tankyard.engine.window.PressureLimit;
import tankyard.engine.window.Window;

/** What would raise the most the gauge may read, by what it is that holds it down. */
final class RaiseMost {
  private RaiseMost() {}

  static List<String> ways(Window window) {
    return window.most().map(RaiseMost::of).orElse(List.of());
  }

  private static List<String> of(PressureLimit most) {
    return switch (most.kind()) {
      case STUFFING_BOX ->
          List.of(
              "A stuffing box that stands more on that well; of its limit "
                  + Versus.print(most.lift(), Unit.PSI, 1)
                  + " goes to height and "
                  + Versus.print(most.friction(), Unit.PSI, 1)
                  + " to line loss, which a bigger flow line saves.");
      case RELIEF_VALVE ->
          List.of("A relief valve set higher, if the nameplate and the flow lines stand it.");
      case NAMEPLATE -> List.of("A separator with a nameplate for more; never more on this one.");
      case PIPE_RATING -> List.of("Heavier pipe, or steel, on the line that governs.");
      case GAUGE_RANGE -> List.of("A gauge with more range.");
      case FLOAT_PULL ->
          List.of("A smaller port, a longer lever or a bigger float, so that it pulls harder.");
      default -> List.of();
    };
  }
}
