package tankyard.app.map.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for labels, so that no two cover each other or a symbol. Labels are offered the most
 * important first; one that finds no room in any of its places is left out, unless it must be
 * shown.
 */
public final class LabelPlacer {
  private static final double GAP_PX = 4;

  /** With more lines than this on the screen there is no place off them anyway. */
  private static final int MOST_STROKES = 400;

  private static final long STROKES_TO_A_COVER = 1000;

  private final double areaWidth;
  private final double areaHeight;
  private final List<Box> taken = new ArrayList<>();
  private final List<double[]> strokes = new ArrayList<>();

  /**
   * A placer for one drawing.
   *
   * @param areaWidth of the drawing, which labels had better not leave
   */
  public LabelPlacer(double areaWidth, double areaHeight) {
    this.areaWidth = areaWidth;
    this.areaHeight = areaHeight;
  }

  /** A rectangle on the screen. */
  public record Box(double x, double y, double width, double height) {
    /** With room beside it, or two names in one row read as one. */
    Box withGap() {
      return new Box(x - GAP_PX, y, width + 2 * GAP_PX, height);
    }

    boolean covers(Box other) {
      return x < other.x + other.width
          && other.x < x + width
          && y < other.y + other.height
          && other.y < y + height;
    }

    /** Whether a straight stroke runs through it, by cutting the stroke to its sides one by one. */
    boolean touches(double x1, double y1, double x2, double y2) {
      double[] share = {0, 1};
      return cut(x1, x2 - x1, x, x + width, share) && cut(y1, y2 - y1, y, y + height, share);
    }

    private static boolean cut(double start, double run, double low, double high, double[] share) {
      if (run == 0) {
        return start >= low && start <= high;
      }
      double a = (low - start) / run;
      double b = (high - start) / run;
      share[0] = Math.max(share[0], Math.min(a, b));
      share[1] = Math.min(share[1], Math.max(a, b));
      return share[0] <= share[1];
    }
  }

  /** Keeps labels off a symbol. */
  public void keepFree(double centreX, double centreY, double width, double height) {
    taken.add(new Box(centreX - width / 2, centreY - height / 2, width, height));
  }

  /** Takes the place around a point for a label if it is free. */
  public boolean takes(double centreX, double centreY, double width, double height) {
    Box box = new Box(centreX - width / 2, centreY - height / 2, width, height);
    return first(List.of(box), false).isPresent();
  }

  /**
   * Makes labels prefer a place that this stroke does not cross; they may cross it if they must.
   */
  public void preferOff(double x1, double y1, double x2, double y2) {
    boolean seen = new Box(0, 0, areaWidth, areaHeight).touches(x1, y1, x2, y2);
    if (seen && strokes.size() < MOST_STROKES) {
      strokes.add(new double[] {x1, y1, x2, y2});
    }
  }

  private long crossed(Box box) {
    return strokes.stream().filter(s -> box.touches(s[0], s[1], s[2], s[3])).count();
  }

  /**
   * A place for a label beside a symbol: right of it, left, above, below, then the corners.
   *
   * @param must whether it is shown even where it covers something
   */
  public Optional<Box> beside(
      double x, double y, SymbolSize symbol, double width, double height, boolean must) {
    double dx = symbol.widthPx() / 2 + GAP_PX;
    double dy = symbol.heightPx() / 2 + GAP_PX;
    List<Box> places =
        List.of(
            new Box(x + dx, y - height / 2, width, height),
            new Box(x - dx - width, y - height / 2, width, height),
            new Box(x - width / 2, y - dy - height, width, height),
            new Box(x - width / 2, y + dy, width, height),
            new Box(x + dx, y - dy - height * 0.8, width, height),
            new Box(x + dx, y + dy - height * 0.2, width, height),
            new Box(x - dx - width, y - dy - height * 0.8, width, height),
            new Box(x - dx - width, y + dy - height * 0.2, width, height));
    return first(places, must);
  }

  /** A place for a label of a line, on either side of a spot on it. */
  public Optional<Box> along(double x, double y, double width, double height, boolean must) {
    List<Box> places =
        List.of(
            new Box(x - width / 2, y - height - GAP_PX, width, height),
            new Box(x - width / 2, y + GAP_PX, width, height),
            new Box(x + GAP_PX * 2, y - height / 2, width, height),
            new Box(x - GAP_PX * 2 - width, y - height / 2, width, height),
            new Box(x + GAP_PX, y + GAP_PX / 2, width, height),
            new Box(x + GAP_PX, y - height - GAP_PX / 2, width, height),
            new Box(x - GAP_PX - width, y + GAP_PX / 2, width, height),
            new Box(x - GAP_PX - width, y - height - GAP_PX / 2, width, height));
    return first(places, must);
  }

  /** The best of the places: covering nothing if it can, then crossing as few strokes as it can. */
  private Optional<Box> first(List<Box> places, boolean must) {
    Box best = null;
    long bestCost = Long.MAX_VALUE;
    for (Box place : places) {
      long covered = covered(place);
      if (covered > 0 && !must) {
        continue;
      }
      long cost = covered * STROKES_TO_A_COVER + crossed(place);
      if (cost < bestCost) {
        best = place;
        bestCost = cost;
      }
      if (cost == 0) {
        break; // Nothing can be better, and most labels end here.
      }
    }
    Optional<Box> chosen = Optional.ofNullable(best);
    chosen.map(Box::withGap).ifPresent(taken::add);
    return chosen;
  }

  private long covered(Box box) {
    boolean leaves =
        box.x() < 0
            || box.y() < 0
            || box.x() + box.width() > areaWidth
            || box.y() + box.height() > areaHeight;
    return taken.stream().filter(box::covers).count() + (leaves ? 1 : 0);
  }
}
