package tankyard.engine.report.map;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Unit;
import tankyard.engine.units.UnitSystem;

/** A round length of ground in the lower left corner of a frame. */
final class ScaleBar {
  private static final double SHARE = 0.3;
  private static final double MOST = 190;
  private static final double HIGH = 30;
  private static final double ROOM = 8;

  private final Frame frame;
  private final Unit unit;
  private final double length;
  private final double wide;

  ScaleBar(Frame frame, UnitSystem units) {
    this.frame = frame;
    this.unit = units.unit(Dimension.LENGTH);
    double room = Math.min(MOST, frame.page().getWidth() * SHARE);
    this.length = RoundSteps.atMost(unit.fromSi(room / frame.scale()));
    this.wide = unit.toSi(length) * frame.scale();
  }

  Rectangle2D box() {
    double textWide = Type.SMALL.width(words()) + Type.SMALL.width("0");
    return new Rectangle2D.Double(
        frame.page().getX() + ROOM,
        frame.page().getMaxY() - ROOM - HIGH,
        wide + 2 * ROOM + textWide / 2,
        HIGH);
  }

  private String words() {
    return Figures.grouped(length) + " " + unit.symbol();
  }

  void paint(Graphics2D g, Palette palette) {
    Rectangle2D box = box();
    g.setColor(palette.veil());
    g.fill(box);
    double x = box.getX() + ROOM;
    double y = box.getMaxY() - ROOM;
    g.setColor(palette.ink());
    g.setStroke(new BasicStroke(1));
    Rectangle2D bar = new Rectangle2D.Double(x, y - 4, wide, 4);
    g.draw(bar);
    g.fill(new Rectangle2D.Double(x, y - 4, wide / 2, 4));
    g.setFont(Type.SMALL.font());
    g.drawString("0", (float) (x - Type.SMALL.width("0") / 2), (float) (y - 7));
    g.drawString(words(), (float) (x + wide - Type.SMALL.width(words()) / 2), (float) (y - 7));
  }
}
