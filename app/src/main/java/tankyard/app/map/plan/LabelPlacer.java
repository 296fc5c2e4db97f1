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

  private final List<Box> taken = new ArrayList<>();

  /** A rectangle on the screen. */
  public record Box(double x, double y, double width, double height) {
    boolean covers(Box other) {
      return x < other.x + other.width
          && other.x < x + width
          && y < other.y + other.height
          && other.y < y + height;
    }
  }

  /** Keeps labels off a symbol. */
  public void keepFree(double centreX, double centreY, double width, double height) {
    taken.add(new Box(centreX - width / 2, centreY - height / 2, width, height));
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
            new Box(x + dx * 0.8, y - dy - height * 0.8, width, height),
            new Box(x + dx * 0.8, y + dy - height * 0.2, width, height),
            new Box(x - dx * 0.8 - width, y - dy - height * 0.8, width, height),
            new Box(x - dx * 0.8 - width, y + dy - height * 0.2, width, height));
    return first(places, must);
  }

  /** A place for a label of a line, on either side of a spot on it. */
  public Optional<Box> along(double x, double y, double width, double height, boolean must) {
    List<Box> places =
        List.of(
            new Box(x - width / 2, y - height - GAP_PX, width, height),
            new Box(x - width / 2, y + GAP_PX, width, height),
            new Box(x + GAP_PX * 2, y - height / 2, width, height),
            new Box(x - GAP_PX * 2 - width, y - height / 2, width, height));
    return first(places, must);
  }

  private Optional<Box> first(List<Box> places, boolean must) {
    Optional<Box> free =
        places.stream().filter(p -> taken.stream().noneMatch(p::covers)).findFirst();
    Optional<Box> chosen = free.or(() -> must ? Optional.of(places.get(0)) : Optional.empty());
    chosen.ifPresent(taken::add);
    return chosen;
  }
}
