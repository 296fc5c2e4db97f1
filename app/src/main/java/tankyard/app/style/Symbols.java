package tankyard.app.style;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import tankyard.app.edit.ThingKind;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;

/**
 * Draws the plan outline of a thing, or its symbol where the outline is too small to see. New work
 * is heavy, what is there already is light, what goes away is broken and struck through, as on any
 * drawing.
 */
public final class Symbols {
  private static final double HEAVY = 2;
  private static final double LIGHT = 1.2;

  private final GraphicsContext g;
  private final Inks inks;

  public Symbols(GraphicsContext g, Inks inks) {
    this.g = g;
    this.inks = inks;
  }

  /**
   * Draws one.
   *
   * @param x its middle
   * @param y its middle
   */
  public void draw(ThingKind kind, double x, double y, double width, double height, Status status) {
    g.save();
    g.setLineWidth(status == Status.NEW ? HEAVY : LIGHT);
    g.setStroke(status == Status.REMOVE ? inks.quiet() : inks.ink());
    if (status == Status.REMOVE) {
      g.setLineDashes(4, 3);
    } else {
      g.setLineDashes();
    }
    switch (kind) {
      case WELL -> well(x, y, width, status);
      case TEE -> tee(x, y, width);
      case SEPARATOR -> separator(x, y, width, height);
      case GUN_BARREL -> gunBarrel(x, y, width);
      case OIL_TANK -> tank(x, y, width, inks.of(Service.OIL_LEG), "O");
      case WATER_TANK -> tank(x, y, width, inks.of(Service.WATER_LEG), "W");
      case INJECTION_PUMP -> pump(x, y, width);
      case INJECTION_WELL -> injectionWell(x, y, width);
      case POWER_POLE -> powerPole(x, y, width);
      case BERM -> berm(x, y, width);
      case LANDMARK -> landmark(x, y, width);
    }
    if (status == Status.REMOVE) {
      strike(x, y, width, height);
    }
    g.restore();
  }

  private void well(double x, double y, double size, Status status) {
    circle(x, y, size, inks.paper());
    double dot = size * 0.5;
    g.setFill(status == Status.REMOVE ? inks.quiet() : inks.ink());
    g.fillOval(x - dot / 2, y - dot / 2, dot, dot);
  }

  private void tee(double x, double y, double size) {
    double r = size / 2;
    double[] xs = {x - r, x, x + r, x};
    double[] ys = {y, y - r, y, y + r};
    g.setFill(inks.paper());
    g.fillPolygon(xs, ys, 4);
    g.strokePolygon(xs, ys, 4);
  }

  private void separator(double x, double y, double width, double height) {
    g.setFill(inks.paper());
    double round = Math.min(width, height);
    g.fillRoundRect(x - width / 2, y - height / 2, width, height, round, round);
    g.strokeRoundRect(x - width / 2, y - height / 2, width, height, round, round);
    double inset = Math.max(3, width * 0.18);
    g.setLineWidth(1);
    g.setLineCap(StrokeLineCap.BUTT);
    g.setStroke(inks.of(Service.WATER_LEG));
    g.strokeLine(x - width / 2 + inset, y, x + width / 2 - inset, y);
  }

  /** Water below and oil above, and the leg that stands beside it. */
  private void gunBarrel(double x, double y, double size) {
    circle(x, y, size, inks.paper());
    double inner = size - Math.max(4, size * 0.16);
    half(x, y, inner, 0, inks.of(Service.OIL_LEG));
    half(x, y, inner, 180, inks.of(Service.WATER_LEG));
    double leg = Math.max(4, size * 0.24);
    circle(x + size / 2, y, leg, inks.paper());
  }

  private void half(double x, double y, double size, double fromDegrees, Color colour) {
    g.setFill(colour.deriveColor(0, 1, 1, 0.3));
    g.fillArc(x - size / 2, y - size / 2, size, size, fromDegrees, 180, ArcType.CHORD);
  }

  private void tank(double x, double y, double size, Color content, String letter) {
    circle(x, y, size, inks.paper());
    g.setFill(content.deriveColor(0, 1, 1, 0.22));
    double inner = size - Math.max(4, size * 0.16);
    g.fillOval(x - inner / 2, y - inner / 2, inner, inner);
    g.setFill(content);
    g.setFont(Font.font(null, FontWeight.BOLD, Math.max(8, Math.min(15, size * 0.5))));
    g.setTextAlign(TextAlignment.CENTER);
    g.setTextBaseline(VPos.CENTER);
    g.fillText(letter, x, y);
  }

  private void pump(double x, double y, double size) {
    circle(x, y, size, inks.paper());
    double r = size / 2;
    double[] xs = {x - r * 0.45, x + r * 0.95, x - r * 0.45};
    double[] ys = {y - r * 0.85, y, y + r * 0.85};
    g.setLineWidth(LIGHT);
    g.setFill(inks.of(Service.INJECTION));
    g.fillPolygon(xs, ys, 3);
  }

  private void injectionWell(double x, double y, double size) {
    circle(x, y, size, inks.paper());
    double r = size / 2;
    Color colour = inks.of(Service.INJECTION);
    g.setStroke(colour);
    g.setFill(colour);
    g.setLineWidth(1.6);
    g.strokeLine(x, y - r * 0.65, x, y + r * 0.2);
    double[] xs = {x - r * 0.42, x + r * 0.42, x};
    double[] ys = {y + r * 0.1, y + r * 0.1, y + r * 0.72};
    g.fillPolygon(xs, ys, 3);
  }

  /** A pole from above with its crossarm and a wire to each side. */
  private void powerPole(double x, double y, double size) {
    double r = size / 2;
    g.strokeLine(x - r, y, x + r, y);
    g.setLineWidth(1);
    g.strokeLine(x - r * 0.8, y - r * 0.75, x - r * 0.8, y + r * 0.75);
    g.strokeLine(x + r * 0.8, y - r * 0.75, x + r * 0.8, y + r * 0.75);
    circle(x, y, size * 0.5, inks.paper());
  }

  /** A wall round a tank, both from above. */
  private void berm(double x, double y, double size) {
    g.setLineDashes(4, 2.5);
    g.strokeRect(x - size / 2, y - size * 0.4, size, size * 0.8);
    g.setLineDashes();
    g.setLineWidth(1);
    circle(x, y, size * 0.42, inks.paper());
  }

  /** The mark of a known place on a survey: a triangle with a dot in it. */
  private void landmark(double x, double y, double size) {
    double r = size / 2;
    double[] xs = {x - r, x, x + r};
    double[] ys = {y + r * 0.75, y - r, y + r * 0.75};
    g.setLineWidth(LIGHT);
    g.setFill(inks.paper());
    g.fillPolygon(xs, ys, 3);
    g.strokePolygon(xs, ys, 3);
    g.setFill(inks.ink());
    g.fillOval(x - 1.3, y + r * 0.15 - 1.3, 2.6, 2.6);
  }

  private void circle(double x, double y, double size, Color fill) {
    g.setFill(fill);
    g.fillOval(x - size / 2, y - size / 2, size, size);
    g.strokeOval(x - size / 2, y - size / 2, size, size);
  }

  private void strike(double x, double y, double width, double height) {
    g.setLineDashes();
    g.setLineWidth(1.6);
    g.setStroke(inks.most());
    double dx = width / 2 + 3;
    double dy = Math.max(height, 8) / 2 + 3;
    g.strokeLine(x - dx, y - dy, x + dx, y + dy);
    g.strokeLine(x - dx, y + dy, x + dx, y - dy);
  }
}
