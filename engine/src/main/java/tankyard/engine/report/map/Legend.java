package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tankyard.engine.lease.Lease;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;
import tankyard.engine.lease.Thing;
import tankyard.engine.study.Outlines;

/** What lines and symbols mean: only those that are drawn. */
final class Legend {
  private static final double ROW = 21;
  private static final double SAMPLE = 40;
  private static final double COLUMN = 196;

  private final Lease lease;
  private final Palette palette;
  private final Ground ground;

  Legend(Lease lease, Palette palette, Ground ground) {
    this.lease = lease;
    this.palette = palette;
    this.ground = ground;
  }

  /** Paints it in two columns, lines and things, and gives the height it took. */
  double paint(Graphics2D g, double x, double top) {
    double lines = lines(g, x, top);
    double things = things(g, x + COLUMN, top);
    return Math.max(lines, things) - top;
  }

  private double lines(Graphics2D g, double x, double top) {
    double y = top;
    for (Service service : services()) {
      g.setColor(palette.line(service));
      g.setStroke(LineLook.of(service));
      sample(g, service.words(), x, y);
      y += ROW;
    }
    if (!lease.berms().isEmpty()) {
      g.setColor(palette.faint());
      g.setStroke(LineLook.BERM);
      sample(g, "berm", x, y);
      y += ROW;
    }
    if (lease.landmarks().stream().anyMatch(l -> !Outlines.setback(l).isEmpty())) {
      OutlineLayer.setbackStroke(g, palette);
      sample(g, "setback", x, y);
      y += ROW;
    }
    if (ground.contours().isPresent()) {
      g.setColor(palette.contour());
      g.setStroke(new BasicStroke(1.3f));
      sample(g, ground.contours().get(), x, y);
      y += ROW;
    }
    if (ground.crosses()) {
      g.setColor(palette.faint());
      g.setStroke(new BasicStroke(1.2f));
      SpotLayer.cross(g, x + SAMPLE / 2, y + ROW / 2);
      words(g, "known height", x + SAMPLE + 9, y);
      y += ROW;
    }
    return y;
  }

  private void sample(Graphics2D g, String words, double x, double y) {
    g.draw(new Line2D.Double(x, y + ROW / 2, x + SAMPLE, y + ROW / 2));
    words(g, words, x + SAMPLE + 9, y);
  }

  private double things(Graphics2D g, double x, double top) {
    double y = top;
    for (Thing thing : kinds().values()) {
      Point2D at = new Point2D.Double(x + 10, y + ROW / 2);
      ThingLayer.paint(g, Symbol.of(thing, at, 0.001), Status.HAVE, Symbol.isWell(thing), palette);
      words(g, thing.kind(), x + 29, y);
      y += ROW;
    }
    return y;
  }

  private void words(Graphics2D g, String words, double x, double y) {
    g.setColor(palette.ink());
    g.setFont(Type.BODY.font());
    g.drawString(words, (float) x, (float) (y + ROW / 2 + 4.5));
  }

  private List<Service> services() {
    List<Service> found = new ArrayList<>();
    for (Service service : Service.values()) {
      if (lease.lines().stream().map(Line::service).anyMatch(s -> s == service)) {
        found.add(service);
      }
    }
    return found;
  }

  /** One thing of each kind. */
  private Map<String, Thing> kinds() {
    Map<String, Thing> kinds = new LinkedHashMap<>();
    Extent.standing(lease).forEach(t -> kinds.putIfAbsent(t.kind(), t));
    return kinds;
  }

  /** Says how new and old are told apart, and what the ground is beyond what is known. */
  static String words(Ground ground) {
    String status =
        "Thick: new. Thin: there already. Grey dots: to be removed. Arrows: as drawn, start to"
            + " end. Things smaller than their symbol are not to scale.";
    return ground.contours().isPresent()
        ? status + " Beyond the outermost known heights the ground is taken to go on level."
        : status;
  }
}
