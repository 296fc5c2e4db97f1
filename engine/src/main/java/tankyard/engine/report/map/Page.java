package tankyard.engine.report.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import tankyard.engine.report.doc.LeaseReport;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.UnitSystem;

/** Lays the map's page out: the lease to the left, title, enlarged corners and legend right. */
final class Page {
  static final int WIDE = 1500;
  static final int HIGH = 1060;
  private static final double EDGE = 22;
  private static final double SIDE = 330;
  private static final double GAP = 18;
  private static final double ROOM = 70;
  private static final double CORNER_HIGH = 280;

  private final Results results;
  private final UnitSystem units;
  private final Palette palette;
  private final List<Sheet> sheets = new ArrayList<>();

  Page(Results results, UnitSystem units, Palette palette) {
    this.results = results;
    this.units = units;
    this.palette = palette;
  }

  void paint(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(palette.paper());
    g.fill(new Rectangle2D.Double(0, 0, WIDE, HIGH));
    Frame frame =
        Frame.around(
            new Rectangle2D.Double(EDGE, EDGE, WIDE - SIDE - GAP - 2 * EDGE, HIGH - 2 * EDGE),
            Extent.of(results.lease()),
            ROOM);
    Ground ground = Ground.of(results.lease(), frame, palette, units);
    List<Corner> corners = Corner.of(results.lease(), frame);
    lease(g, ground, frame, corners);
    side(g, ground, corners);
  }

  /** What was painted, for a test to look at. */
  List<Sheet> sheets() {
    return List.copyOf(sheets);
  }

  private void lease(Graphics2D g, Ground ground, Frame frame, List<Corner> corners) {
    Sheet sheet = new Sheet(results, units, palette, ground, frame).withLengths();
    ScaleBar bar = new ScaleBar(frame, units);
    sheet.keepOff(bar.box());
    sheet.keepOff(NorthArrow.box(frame));
    sheet.paint(g, corners);
    bar.paint(g, palette);
    NorthArrow.paint(g, frame, palette);
    sheets.add(sheet);
  }

  private void side(Graphics2D g, Ground ground, List<Corner> corners) {
    double x = WIDE - EDGE - SIDE;
    double y = EDGE;
    y = text(g, results.lease().name(), Type.TITLE, palette.ink(), x, y);
    y = text(g, "Lease map, " + results.date(), Type.BODY, palette.faint(), x, y + 2);
    if (ground.hasHeights()) {
      y = text(g, "Heights above: " + datum(), Type.BODY, palette.faint(), x, y);
    }
    y += 12;
    for (Corner corner : corners) {
      y = text(g, corner.title() + ", enlarged", Type.HEADING, palette.ink(), x, y) + 5;
      corner(g, ground, corner, new Rectangle2D.Double(x, y, SIDE, CORNER_HIGH));
      y += CORNER_HIGH + 14;
    }
    y = text(g, "Legend", Type.HEADING, palette.ink(), x, y) + 4;
    y += new Legend(results.lease(), palette, ground).paint(g, x, y) + 8;
    y = text(g, Legend.words(ground), Type.SMALL, palette.faint(), x, y) + 8;
    double foot = HIGH - EDGE - 2 * Type.SMALL.height();
    text(g, LeaseReport.STANDING, Type.SMALL, palette.ink(), x, Math.max(y, foot));
  }

  private String datum() {
    String datum = results.lease().site().datum();
    return datum.isBlank() ? "the lease's own datum" : datum;
  }

  private void corner(Graphics2D g, Ground ground, Corner corner, Rectangle2D place) {
    Frame frame = Frame.around(place, corner.lease(), 48);
    Sheet sheet = new Sheet(results, units, palette, ground, frame);
    ScaleBar bar = new ScaleBar(frame, units);
    sheet.keepOff(bar.box());
    sheet.paint(g, List.of());
    bar.paint(g, palette);
    sheets.add(sheet);
  }

  /** Prints a paragraph in the side column and gives where the next may start. */
  private static double text(
      Graphics2D g, String text, Type type, Color color, double x, double top) {
    g.setFont(type.font());
    g.setColor(color);
    double y = top;
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      String longer = line.length() == 0 ? word : line + " " + word;
      if (line.length() > 0 && type.width(longer) > SIDE) {
        g.drawString(line.toString(), (float) x, (float) (y + type.ascent()));
        y += type.height();
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    g.drawString(line.toString(), (float) x, (float) (y + type.ascent()));
    return y + type.height();
  }
}
