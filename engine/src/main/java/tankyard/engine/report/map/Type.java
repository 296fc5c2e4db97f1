package tankyard.engine.report.map;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;

/** The letters of a map. */
enum Type {
  TITLE(Font.BOLD, 24),
  HEADING(Font.BOLD, 14),
  BODY(Font.PLAIN, 12.5f),
  THING(Font.BOLD, 12.5f),
  LINE(Font.PLAIN, 11),
  SMALL(Font.PLAIN, 10.5f);

  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

  private final Font font;

  Type(int style, float size) {
    this.font = new Font(Font.SANS_SERIF, style, 12).deriveFont(size);
  }

  Font font() {
    return font;
  }

  double width(String text) {
    return font.getStringBounds(text, MEASURE).getWidth();
  }

  double height() {
    Rectangle2D bounds = font.getStringBounds("Xg", MEASURE);
    return bounds.getHeight();
  }

  /** From the top of a line of text to the feet of its letters. */
  double ascent() {
    return font.getLineMetrics("Xg", MEASURE).getAscent();
  }
}
