package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Which way is north, in the upper right corner of a frame. */
final class NorthArrow {
  private static final double WIDE = 34;
  private static final double HIGH = 54;

  private NorthArrow() {}

  static Rectangle2D box(Frame frame) {
    return new Rectangle2D.Double(
        frame.page().getMaxX() - WIDE - 8, frame.page().getY() + 8, WIDE, HIGH);
  }

  static void paint(Graphics2D g, Frame frame, Palette palette) {
    Rectangle2D box = box(frame);
    g.setColor(palette.veil());
    g.fill(box);
    double x = box.getCenterX();
    double top = box.getY() + 20;
    double foot = box.getMaxY() - 4;
    g.setColor(palette.ink());
    g.fill(half(x, top, foot, -9));
    g.setStroke(new BasicStroke(1.1f));
    g.draw(half(x, top, foot, 9));
    g.setFont(Type.HEADING.font());
    g.drawString("N", (float) (x - Type.HEADING.width("N") / 2), (float) (box.getY() + 15));
  }

  private static Path2D half(double x, double top, double foot, double side) {
    Path2D path = new Path2D.Double();
    path.moveTo(x, top);
    path.lineTo(x + side, foot);
    path.lineTo(x, foot - 7);
    path.closePath();
    return path;
  }
}
