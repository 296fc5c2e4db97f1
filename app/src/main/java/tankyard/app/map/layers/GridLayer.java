package tankyard.app.map.layers;

import javafx.scene.canvas.GraphicsContext;
import tankyard.app.map.plan.MapBox;
import tankyard.engine.units.Dimension;

/** A grid of round feet or metres, fine enough to judge a distance by and no finer. */
public final class GridLayer implements Layer {
  private static final double CELL_PX = 80;

  @Override
  public void paint(Painting p) {
    if (!p.shown().grid()) {
      return;
    }
    double unitM = p.units().unit(Dimension.LENGTH).toSi(1);
    double step = RoundNumber.atLeast(p.camera().metres(CELL_PX) / unitM) * unitM;
    MapBox view = p.camera().view();
    GraphicsContext g = p.g();
    g.setStroke(p.inks().grid());
    g.setLineWidth(1);
    g.setLineDashes();
    for (double e = Math.ceil(view.westM() / step) * step; e <= view.eastM(); e += step) {
      double x = Math.floor(p.camera().x(e)) + 0.5;
      g.strokeLine(x, 0, x, p.height());
    }
    for (double n = Math.ceil(view.southM() / step) * step; n <= view.northM(); n += step) {
      double y = Math.floor(p.camera().y(n)) + 0.5;
      g.strokeLine(0, y, p.width(), y);
    }
  }
}
