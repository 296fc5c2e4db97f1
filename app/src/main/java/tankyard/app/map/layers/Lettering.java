package tankyard.app.map.layers;

import java.util.HashMap;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Words on the drawing, with a rim of paper round them so that they read over lines. */
final class Lettering {
  static final Font NAME = Font.font(null, FontWeight.SEMI_BOLD, 12);
  static final Font NOTE = Font.font(null, FontWeight.NORMAL, 11);
  static final double LINE_PX = 14;
  private static final Map<String, Double> WIDTHS = new HashMap<>();

  private Lettering() {}

  static double width(String words, Font font) {
    return WIDTHS.computeIfAbsent(
        font.getSize() + font.getStyle() + words,
        key -> {
          Text text = new Text(words);
          text.setFont(font);
          return text.getLayoutBounds().getWidth();
        });
  }

  /** Words whose left top corner is given. */
  static void write(
      GraphicsContext g, String words, Font font, double x, double y, Color ink, Color rim) {
    g.setFont(font);
    g.setTextAlign(TextAlignment.LEFT);
    g.setTextBaseline(VPos.TOP);
    g.setLineJoin(StrokeLineJoin.ROUND);
    g.setLineDashes();
    g.setLineWidth(3);
    g.setStroke(rim);
    g.strokeText(words, x, y);
    g.setFill(ink);
    g.fillText(words, x, y);
  }

  /** Words on a filled plate: a badge that must be seen at once. */
  static void plate(GraphicsContext g, String words, double x, double y, Color plate, Color ink) {
    double width = width(words, NAME) + 12;
    g.setFill(plate);
    g.fillRoundRect(x, y, width, PLATE_PX, 6, 6);
    g.setFont(NAME);
    g.setTextAlign(TextAlignment.LEFT);
    g.setTextBaseline(VPos.CENTER);
    g.setFill(ink);
    g.fillText(words, x + 6, y + PLATE_PX / 2);
  }

  static final double PLATE_PX = 18;

  static double plateWidth(String words) {
    return width(words, NAME) + 12;
  }
}
