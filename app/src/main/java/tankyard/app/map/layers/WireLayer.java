package tankyard.app.map.layers;

import javafx.scene.canvas.GraphicsContext;
import tankyard.app.map.plan.PlanWire;

/**
 * The wires of the pole or motor that is picked or under the pointer; all of them would be a web.
 */
public final class WireLayer implements Layer {
  @Override
  public void paint(Painting p) {
    p.plan().wires().stream().filter(wire -> isLit(p, wire)).forEach(wire -> wire(p, wire));
  }

  private static boolean isLit(Painting p, PlanWire wire) {
    return wire.touches(p.hovered()) || p.picked().stream().anyMatch(wire::touches);
  }

  private static void wire(Painting p, PlanWire wire) {
    GraphicsContext g = p.g();
    g.setStroke(p.inks().ink());
    g.setLineWidth(1);
    g.setLineDashes(2, 4);
    g.strokeLine(
        p.camera().x(wire.pole()),
        p.camera().y(wire.pole()),
        p.camera().x(wire.motor()),
        p.camera().y(wire.motor()));
    g.setLineDashes();
  }
}
