package tankyard.engine.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import tankyard.engine.window.Room;
import tankyard.engine.window.Window;
import tankyard.engine.window.WindowFinder;

/**
 * The back-pressure window: more water asks for more at the gauge, and leaves the boxes less. The
 * month is found by trying; where five years bring it nowhere near, one trial is all it costs.
 */
final class WindowSide {
  /** Months; a tenth is shown. */
  private static final double CLOSE = 1e-4;

  private static final int MOST_TRIALS = 60;

  private final Flood flood;
  private final List<Window> windows;

  WindowSide(Flood flood, List<Window> windows) {
    this.flood = flood;
    this.windows = windows;
  }

  List<RunOut> rows() {
    List<RunOut> rows = new ArrayList<>();
    for (Window window : windows) {
      setting(window).ifPresent(rows::add);
      closed(window).ifPresent(rows::add);
    }
    return rows;
  }

  /** Until the least stands at what the gauge reads at its setting. */
  private Optional<RunOut> setting(Window window) {
    return window
        .setting()
        .filter(s -> window.least().isPresent())
        .flatMap(s -> month(m -> s.gauge().toPsi() - room(window, m).leastPsi()))
        .map(
            m ->
                row(
                    RunOut.Kind.SETTING,
                    window,
                    "The gauge of "
                        + window.separatorName()
                        + " at its setting reads no more than the least",
                    m,
                    "the least meets the reading at the setting"));
  }

  private Optional<RunOut> closed(Window window) {
    if (window.least().isEmpty() || window.most().isEmpty()) {
      return Optional.empty();
    }
    return month(m -> room(window, m).roomPsi())
        .map(
            m ->
                row(
                    RunOut.Kind.WINDOW,
                    window,
                    "No setting works at " + window.separatorName() + ": the window is closed",
                    m,
                    "least and build-up meet the most"));
  }

  private RunOut row(RunOut.Kind kind, Window window, String words, double months, String how) {
    return new RunOut(
        kind,
        window.separatorId(),
        Optional.empty(),
        words,
        flood.found("Months until then", months, how));
  }

  private Room room(Window window, double months) {
    return WindowFinder.room(flood.after(months), window.separatorId());
  }

  /** Where what is left is nothing; empty where it never is within the horizon. */
  private static Optional<Double> month(DoubleUnaryOperator left) {
    if (left.applyAsDouble(Outlook.HORIZON_MONTHS) > 0) {
      return Optional.empty();
    }
    if (left.applyAsDouble(0) <= 0) {
      return Optional.of(0.0);
    }
    return Optional.of(
        new BrentSolver(CLOSE).solve(MOST_TRIALS, left::applyAsDouble, 0, Outlook.HORIZON_MONTHS));
  }
}
