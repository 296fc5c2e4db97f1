package tankyard.app.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import tankyard.app.chart.Scale;
import tankyard.app.pressure.WindowPicture.End;
import tankyard.app.pressure.WindowPicture.Segment;
import tankyard.app.pressure.WindowPicture.State;

/** The coloured parts of the bar. */
final class BarZones {
  private static final double THIN = 8; // a part that gives back, and the build-up

  private final List<Zone> zones = new ArrayList<>();

  /**
   * One rectangle.
   *
   * @param top share of the bar's height above it
   * @param height share of the bar's height
   */
  private record Zone(Region node, double from, double to, double top, double height) {}

  BarZones(WindowPicture picture) {
    double low = picture.axis().low();
    double high = picture.axis().high();
    add("bar-track", low, high, 0, 1);
    picture.segments().forEach(this::segment);
    if (picture.isCrossed()) {
      add("bar-short", most(picture), least(picture), 0, 1);
    }
    picture.most().ifPresent(m -> over(picture, m, high));
    if (picture.least().isPresent() && picture.most().isPresent() && !picture.isCrossed()) {
      String style = picture.state() == State.OPEN ? "bar-open" : "bar-narrow";
      add(style, least(picture), most(picture), 0, 1);
    }
    picture.least().ifPresent(this::band);
    picture.most().ifPresent(this::band);
    picture
        .setting()
        .filter(s -> s.atFlow() > s.value())
        .ifPresent(
            s ->
                add(
                    s.fits() ? "bar-build-up" : "bar-build-up-out",
                    s.value(),
                    s.atFlow(),
                    0.5 - THIN / WindowBar.BAR_HEIGHT,
                    2 * THIN / WindowBar.BAR_HEIGHT));
  }

  List<Node> nodes() {
    return zones.stream().<Node>map(Zone::node).toList();
  }

  void layout(Scale scale, double barTop) {
    for (Zone zone : zones) {
      double left = scale.place(zone.from());
      double right = scale.place(zone.to());
      double top = barTop + zone.top() * WindowBar.BAR_HEIGHT;
      zone.node()
          .resizeRelocate(
              left, top, Math.max(0, right - left), zone.height() * WindowBar.BAR_HEIGHT);
    }
  }

  /** A static that helps lies below zero; the other parts start from there and pass over it. */
  private void segment(Segment segment) {
    boolean helps = segment.to() < segment.from();
    String style = "bar-" + segment.part().name().toLowerCase(Locale.ROOT);
    double thin = THIN / WindowBar.BAR_HEIGHT;
    if (helps) {
      add(style, segment.to(), segment.from(), 1 - thin, thin);
    } else {
      add(style, segment.from(), segment.to(), 0, segment.from() < 0 ? 1 - thin : 1);
    }
  }

  private void over(WindowPicture picture, End most, double high) {
    double from = picture.isCrossed() ? least(picture) : most.value();
    add("bar-over", from, high, 0, 1);
  }

  private void band(End end) {
    if (end.band() > 0) {
      add("bar-band", end.value() - end.band(), end.value() + end.band(), 0.32, 0.36);
    }
  }

  private static double least(WindowPicture picture) {
    return picture.least().orElseThrow().value();
  }

  private static double most(WindowPicture picture) {
    return picture.most().orElseThrow().value();
  }

  private void add(String style, double from, double to, double top, double height) {
    Region node = new Region();
    node.getStyleClass().addAll("bar-zone", style);
    node.setMouseTransparent(true);
    zones.add(new Zone(node, from, to, top, height));
  }
}
